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
 * @param role priest, deacon, bishop, administrator or sacristan
 * @param visiting whether the person comes from outside the cluster
 * @param heightCm height in centimetres, {@link Cells#NOT_SAID} if left out
 * @param permittedWeekday Masses on a weekday, {@link Cells#NOT_SAID} where the cluster's number
 *     holds; likewise permittedSunday for Sundays and holy days
 * @param churches slugs of the churches a sacristan looks after
 */
record PersonLine(
    int line,
    String key,
    String name,
    String shortName,
    String title,
    String role,
    boolean visiting,
    int heightCm,
    int permittedWeekday,
    int permittedSunday,
    List<String> churches,
    String note) {

  static final List<Column> COLUMNS =
      List.of(
          required("key", "Short name that other files use, for example ambrose-tarnwick"),
          required("name", "First and last name"),
          required("shortName", "What a tight table shows, commonly the last name"),
          optional("title", "What stands before the name, for example Fr"),
          required("role", "priest, deacon, bishop, administrator or sacristan"),
          optional("visiting", "Whether the person comes from outside the cluster"),
          optional("heightCm", "Height in centimetres, 100 to 230, for the fit of a vestment"),
          optional(
              "permittedWeekday",
              "Masses on a weekday, 1 to 4, where the person's permission differs from the cluster's"),
          optional("permittedSunday", "Masses on a Sunday or holy day, 1 to 4, likewise"),
          optional("churches", "Slugs of the churches a sacristan looks after, with bars between"),
          optional("note", "Anything worth knowing"));

  PersonLine {
    churches = List.copyOf(churches);
  }

  static Reading<PersonLine> read(byte[] file) {
    return CsvTable.parse(file, ImportWhat.PEOPLE)
        .read(PersonLine::parse)
        .unique("key", PersonLine::line, line -> List.of(line.key()));
  }

  static Reading<PersonLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    PersonLine person =
        new PersonLine(
            cells.number(),
            cells.name("key", Form.SLUG),
            cells.text("name"),
            cells.text("shortName"),
            cells.text("title"),
            cells.word("role", Words.ROLES),
            cells.flag("visiting"),
            cells.number("heightCm", Range.HEIGHT),
            cells.number("permittedWeekday", Range.PERMITTED),
            cells.number("permittedSunday", Range.PERMITTED),
            cells.names("churches", Form.SLUG),
            cells.text("note"));
    return cells.reading(() -> person);
  }
}
