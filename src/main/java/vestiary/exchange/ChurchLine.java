package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.List;

/**
 * A church, as a line gives it.
 *
 * @param line physical line in the file
 * @param titular id of a celebration of the calendar, empty if left out
 * @param titularDay month and day such as 09-19 where the calendar has no such celebration, or
 *     empty
 * @param titularColour colour of that celebration, empty with titularDay
 * @param dedication {@link LocalDate#MIN} if left out
 * @param lastInventory {@link LocalDate#MIN} if left out
 * @param latitude degrees north, not a number if left out; likewise longitude, degrees east
 */
record ChurchLine(
    int line,
    String slug,
    String name,
    String parish,
    String place,
    String title,
    String titular,
    String titularDay,
    String titularColour,
    LocalDate dedication,
    int setOutMinutes,
    int clearanceMinutes,
    double latitude,
    double longitude,
    LocalDate lastInventory) {

  /** What it is dedicated to, in words and as a celebration of the calendar. */
  static final String TITLE = "title";

  static final String TITULAR = "titular";

  static final List<Column> COLUMNS =
      List.of(
          required("slug", word("Short name of the church in addresses, for example ht")),
          required("name", word("Name people use")),
          required("parish", word("Name of the parish; made if it is new")),
          required("place", word("Town or village")),
          required(TITLE, word("Title of the church in full")),
          optional(
              TITULAR,
              word(
                  "Celebration of the title, by its id in the calendar, for example trinity-sunday")),
          optional(
              "titularDay",
              word(
                  "Month and day of the title, for example 09-19, where the calendar has no such celebration")),
          optional("titularColour", word("Colour of that celebration; goes with titularDay")),
          optional("dedication", word("Date the church was dedicated")),
          required(
              "setOutMinutes",
              word("Minutes before Mass by which vestments are set out, 0 to 240")),
          required(
              "clearanceMinutes",
              word("Minutes after Mass until vestments are put away, 0 to 240")),
          optional("latitude", word("Degrees north, -90 to 90; goes with longitude")),
          optional("longitude", word("Degrees east, -180 to 180; goes with latitude")),
          optional("lastInventory", word("Date of the last inventory, if it was made elsewhere")));

  /** Churches are dedicated in public since the fourth century; from memory. */
  private static final DateWords DEDICATIONS = DateWords.iso(300);

  static Reading<ChurchLine> read(CsvTable table, DateWords words) {
    return table
        .read(line -> parse(line, words))
        .unique("slug", ChurchLine::line, line -> List.of(line.slug()));
  }

  static Reading<ChurchLine> parse(CsvLine line, DateWords words) {
    Cells cells = new Cells(line, COLUMNS);
    ChurchLine church =
        new ChurchLine(
            cells.line(),
            cells.name("slug", Form.SLUG),
            cells.text("name"),
            cells.text("parish"),
            cells.text("place"),
            cells.text(TITLE),
            cells.name(TITULAR, Form.TITULAR),
            cells.monthAndDay("titularDay"),
            cells.word("titularColour", Words.COLOURS),
            cells.date("dedication", DEDICATIONS, "").orElse(LocalDate.MIN),
            cells.number("setOutMinutes", Range.LEAD),
            cells.number("clearanceMinutes", Range.LEAD),
            cells.degrees("latitude", 90),
            cells.degrees("longitude", 180),
            cells.date("lastInventory", words, "").orElse(LocalDate.MIN));
    checkTitle(cells);
    checkPlace(cells);
    return cells.reading(() -> church);
  }

  private static void checkTitle(Cells cells) {
    if (cells.has(TITULAR) && cells.has("titularDay")) {
      cells.refuse("titularDay", say("Leave it empty where titular names a celebration."));
    }
    if (cells.has("titularDay") != cells.has("titularColour")) {
      cells.refuse("titularColour", say("Fill in titularDay and titularColour, or neither."));
    }
  }

  private static void checkPlace(Cells cells) {
    if (cells.has("latitude") != cells.has("longitude")) {
      cells.refuse("longitude", say("Fill in latitude and longitude, or neither."));
    }
  }
}
