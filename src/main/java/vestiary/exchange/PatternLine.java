package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.stream.Stream;
import vestiary.pattern.Recurrence;
import vestiary.schedule.SavePattern;

/**
 * A recurring Mass, as a line gives it.
 *
 * @param line physical line in the file
 * @param church slug of the church
 * @param rrule days on which it recurs, by RFC 5545, in capital letters: daily or rarer, its end if
 *     any a date or a count; empty where the bounds name days of the calendar
 * @param starts first date on which the rule holds
 * @param time local time at which Mass begins, the same in summer and winter
 * @param minutes length
 * @param celebrant key of the principal celebrant, empty if left out
 * @param concelebrants number of them, 0 or more; likewise deacons
 * @param ministers who else vests
 * @param mass id of a {@link vestiary.calendar.MassKind}, empty where the calendar decides
 */
record PatternLine(
    int line,
    String church,
    String rrule,
    LocalDate starts,
    LocalTime time,
    int minutes,
    String celebrant,
    int concelebrants,
    int deacons,
    String mass,
    List<MinistersEntry> ministers,
    String note,
    String language,
    SavePattern.Bounds bounds) {

  private static final List<Column> OWN =
      List.of(
          required("church", word("Church, by its short name")),
          optional(
              "rrule",
              word(
                  "Days on which the Mass recurs, as a rule of RFC 5545, for example FREQ=WEEKLY;BYDAY=SU; needed unless days says them")),
          required("starts", word("First date on which the rule holds")),
          required("time", word("Local time at which Mass begins")),
          required("minutes", word("Length in minutes, 5 to 360")),
          optional("celebrant", word("Principal celebrant, by the key")),
          optional("concelebrants", word("Number of concelebrants, 0 to 200; empty is none")),
          optional("deacons", word("Number of deacons, 0 to 200; empty is none")),
          optional("mass", word("Which Mass is said; empty leaves it to the calendar")),
          optional("ministers", word("Who else vests at every one, as in the list of Masses")),
          optional("note", word("Note: anything worth knowing")),
          optional(
              "language", word("Language, by its tag, one of the cluster's; empty for its first")));

  static final List<Column> COLUMNS =
      Stream.concat(OWN.stream(), PatternBounds.COLUMNS.stream()).toList();

  PatternLine {
    ministers = List.copyOf(ministers);
  }

  static Reading<PatternLine> read(CsvTable table) {
    return table
        .read(PatternLine::parse)
        .unique("rrule", PatternLine::line, PatternLine::recurrence);
  }

  static Reading<PatternLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    LocalDate starts = cells.date("starts", DateWords.ISO, "").orElse(LocalDate.MIN);
    PatternLine pattern =
        new PatternLine(
            cells.line(),
            cells.name("church", Form.CHURCH),
            rrule(cells, starts),
            starts,
            cells.time("time"),
            cells.number("minutes", Range.LENGTH),
            cells.name("celebrant", Form.PERSON),
            cells.number("concelebrants", Range.MINISTERS, 0),
            cells.number("deacons", Range.MINISTERS, 0),
            cells.word("mass", Words.MASSES),
            cells.all("ministers", MinistersEntry::find, MinistersEntry::wanted),
            cells.text("note"),
            cells.text("language"),
            PatternBounds.read(cells));
    return cells.reading(() -> pattern);
  }

  private static String rrule(Cells cells, LocalDate starts) {
    if (!cells.has("rrule")) {
      if (!cells.has("days")) {
        cells.refuse("rrule", say("Write a rule here, or say days of the calendar."));
      }
      return "";
    }
    try {
      Recurrence recurrence = Recurrence.parse(cells.text("rrule"));
      if (!starts.equals(LocalDate.MIN) && !recurrence.hasDate(starts)) {
        cells.refuse("rrule", say("The rule names no day on or after %s.", starts));
      }
      return recurrence.toString();
    } catch (IllegalArgumentException unfit) {
      cells.refuse("rrule", unfit.getMessage());
      return "";
    }
  }

  private List<String> recurrence() {
    return List.of("%s%s %s from %s in %s".formatted(rrule, bounds.days(), time, starts, church));
  }
}
