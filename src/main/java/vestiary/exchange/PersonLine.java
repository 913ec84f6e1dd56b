package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import vestiary.people.SaveMinistry;
import vestiary.people.SavePerson;

/**
 * A person, as a line gives it. Whether that person may sign in is not said here.
 *
 * @param line physical line in the file
 * @param person name by which other lists refer to the person, and who it is
 * @param ministry what is served; what the file has no column for stays as it is
 */
record PersonLine(int line, SavePerson.Request person, SaveMinistry.Request ministry) {

  static final List<Column> COLUMNS =
      List.of(
          required("key", word("Short name that other files use, for example ambrose-tarnwick")),
          required("name", word("First and last name")),
          required("shortName", word("What a tight table shows, commonly the last name")),
          optional("title", word("What stands before the name, for example Fr")),
          required(
              "role",
              word(
                  "Role: priest, deacon, bishop, administrator, sacristan, server, reader or minister")),
          optional("visiting", word("Whether the person comes from outside the cluster")),
          optional(
              "minor",
              word(
                  "Whether the person is under 18; then everybody else reads the first name and an initial, and the key tells no more")),
          optional(
              "responsible",
              word("Who answers for somebody under 18, by name alone; needed for a child")),
          optional(
              "churches",
              word("Churches served, by their short names with bars between; empty is all")),
          optional(
              "languages",
              word(
                  "Languages spoken, with bars between, the best spoken first, by name or as in es")),
          optional("days", word("Usual days as in monday, with bars between; empty is any")),
          optional("mostADay", word("How many Masses a day he wishes to say at most")),
          optional("wishes", word("Anything to be thought of when Masses are given out")),
          optional("ownSet", word("Vestments of his own")),
          optional(
              "permittedWeekday",
              word("Masses permitted to him on a weekday (canon 905), where not as for all")),
          optional("permittedSunday", word("Masses permitted to him on Sundays and holy days")),
          optional("grantedBy", word("Who granted it")),
          optional("grantedOn", word("When, for example 2026-12-08")));

  static Reading<PersonLine> read(CsvTable table) {
    return table
        .read(PersonLine::parse)
        .unique("key", PersonLine::line, line -> List.of(line.person().slug()));
  }

  static Reading<PersonLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    PersonLine person = new PersonLine(cells.line(), person(cells), ministry(cells));
    return cells.reading(() -> person);
  }

  private static SavePerson.Request person(Cells cells) {
    return new SavePerson.Request(
        cells.name("key", Form.KEY),
        cells.text("name"),
        cells.text("shortName"),
        cells.text("title"),
        cells.word("role", Words.ROLES),
        cells.flag("visiting"),
        cells.isIn("minor") ? cells.flag("minor") : null,
        said(cells, "responsible", cells::text));
  }

  private static SaveMinistry.Request ministry(Cells cells) {
    return new SaveMinistry.Request(
        said(cells, "churches", column -> all(cells, column)),
        said(cells, "languages", column -> all(cells, column)),
        said(cells, "days", column -> all(cells, column)),
        said(cells, "mostADay", column -> cells.number(column, Range.PERMITTED, 0)),
        said(cells, "wishes", cells::text),
        said(cells, "ownSet", cells::text),
        said(cells, "permittedWeekday", column -> cells.number(column, Range.PERMITTED, 0)),
        cells.has("permittedSunday") ? cells.number("permittedSunday", Range.PERMITTED) : null,
        cells.text("grantedBy"),
        cells.text("grantedOn"));
  }

  private static List<String> all(Cells cells, String column) {
    return cells.all(column, Optional::of, () -> say("Write them with bars between."));
  }

  /** Null where the file has no such column. */
  private static <T> T said(Cells cells, String column, Function<String, T> reader) {
    return cells.isIn(column) ? reader.apply(column) : null;
  }
}
