package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;

import java.util.List;

/**
 * A person, as a line gives it. Whether that person may sign in is not said here.
 *
 * @param line physical line in the file
 * @param key name by which other lists refer to the person
 * @param title what stands before the name, empty if left out
 * @param role priest, deacon, bishop, administrator, sacristan or minister
 * @param visiting whether the person comes from outside the cluster
 */
record PersonLine(
    int line,
    String key,
    String name,
    String shortName,
    String title,
    String role,
    boolean visiting) {

  static final List<Column> COLUMNS =
      List.of(
          required("key", "Short name that other files use, for example ambrose-tarnwick"),
          required("name", "First and last name"),
          required("shortName", "What a tight table shows, commonly the last name"),
          optional("title", "What stands before the name, for example Fr"),
          required("role", "priest, deacon, bishop, administrator, sacristan or minister"),
          optional("visiting", "Whether the person comes from outside the cluster"));

  static Reading<PersonLine> read(byte[] file) {
    return CsvTable.parse(file, ImportWhat.PEOPLE)
        .read(PersonLine::parse)
        .unique("key", PersonLine::line, line -> List.of(line.key()));
  }

  static Reading<PersonLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    PersonLine person =
        new PersonLine(
            cells.line(),
            cells.name("key", Form.KEY),
            cells.text("name"),
            cells.text("shortName"),
            cells.text("title"),
            cells.word("role", Words.ROLES),
            cells.flag("visiting"));
    return cells.reading(() -> person);
  }
}
