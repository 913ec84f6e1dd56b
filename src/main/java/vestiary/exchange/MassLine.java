package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A dated Mass or other liturgy, as a line gives it. Texts that were left out are empty.
 *
 * @param line physical line in the file
 * @param church slug of the church
 * @param date local date, and time local time, at which it begins
 * @param minutes length
 * @param mass id of a {@link vestiary.calendar.MassKind}, empty where the calendar decides
 * @param leave none, celebrant, rector or bishop
 * @param celebration id of the chosen celebration of the day
 * @param colour id of the chosen {@link vestiary.calendar.Colour}
 * @param celebrant key of the principal celebrant, or of the minister who presides
 * @param concelebrants number of them, 0 or more; likewise deacons
 * @param named keys of concelebrants and deacons who are known by name
 * @param ministers who else vests
 * @param also what whoever presides puts on besides: cope, humeral-veil
 * @param serving who serves, by name; none leaves it as it is
 * @param setOutMinutes {@link Cells#NOT_SAID} where the usual number holds
 * @param replaces times of the regular Masses of that church and day that do not take place; where
 *     there is none at such a time, nothing is asked
 */
record MassLine(
    int line,
    String church,
    LocalDate date,
    LocalTime time,
    int minutes,
    String mass,
    String votiveOf,
    String leave,
    String celebration,
    String colour,
    String celebrant,
    int concelebrants,
    int deacons,
    List<String> named,
    List<Bringing> brings,
    boolean bishop,
    List<MinistersEntry> ministers,
    List<String> also,
    int setOutMinutes,
    List<LocalTime> replaces,
    String note,
    String intention,
    String language,
    List<ServingEntry> serving) {

  static final List<Column> COLUMNS =
      List.of(
          required("church", word("Church, by its short name")),
          required("date", word("Date on which it begins")),
          required("time", word("Local time at which it begins")),
          required("minutes", word("Length in minutes, 5 to 360")),
          optional("mass", word("Which Mass or other liturgy; empty leaves it to the calendar")),
          optional("votiveOf", word("What a votive Mass is of")),
          optional(
              "leave",
              word("Whose leave a votive Mass rests on: none, celebrant, rector or bishop")),
          optional(
              "celebration",
              word("Chosen celebration, by its id; empty keeps the first of the day")),
          optional("colour", word("Chosen colour; empty leaves it to the Mass")),
          optional("celebrant", word("Principal celebrant or minister who presides, by the key")),
          optional("concelebrants", word("Number of concelebrants, 0 to 200; empty is none")),
          optional("deacons", word("Number of deacons, 0 to 200; empty is none")),
          optional(
              "named",
              word(
                  "Concelebrants and deacons who are known by name, by their keys with bars between; they are counted in the numbers")),
          optional(
              "brings",
              word(
                  "Who brings what of his own, for example principal:chasuble+stole, or concelebrant 2:alb")),
          optional("bishop", word("Whether a bishop presides who is not the celebrant named")),
          optional(
              "ministers",
              word(
                  "Who else vests, for example server 4, or server 3:120+130+130 with the sizes of their albs")),
          optional(
              "also",
              word(
                  "What the celebrant also wears: cope, humeral-veil, or both with a bar between")),
          optional(
              "setOutMinutes",
              word(
                  "Minutes before it by which vestments are set out, 1 to 240, where not as usual")),
          optional(
              "replaces",
              word(
                  "Times of the regular Masses of that church and day that this takes the place of, with bars between")),
          optional("note", word("Note: anything worth knowing")),
          optional(
              "intention",
              word("Intention; seen by the administrator, the pastor and the celebrant only")),
          optional(
              "language", word("Language, by its tag, one of the cluster's; empty for its first")),
          optional(
              "serving",
              word(
                  "Those who serve, by their keys with bars between, each with a colon and the role where it is not the usual one; empty leaves whoever is named")));

  MassLine {
    named = List.copyOf(named);
    brings = List.copyOf(brings);
    ministers = List.copyOf(ministers);
    also = List.copyOf(also);
    replaces = List.copyOf(replaces);
    serving = List.copyOf(serving);
  }

  static Reading<MassLine> read(CsvTable table, DateWords words) {
    return table.read(line -> parse(line, words)).unique("time", MassLine::line, MassLine::start);
  }

  static Reading<MassLine> parse(CsvLine line, DateWords words) {
    Cells cells = new Cells(line, COLUMNS);
    String church = cells.name("church", Form.CHURCH);
    Optional<LocalDate> date = cells.date("date", words, church);
    MassLine mass = of(cells, church, date.orElse(LocalDate.MIN));
    Reading<MassLine> reading = cells.reading(() -> mass);
    return reading.isGood() && date.isEmpty() ? Reading.nothing() : reading;
  }

  private static MassLine of(Cells cells, String church, LocalDate date) {
    return new MassLine(
        cells.line(),
        church,
        date,
        cells.time("time"),
        cells.number("minutes", Range.LENGTH),
        cells.word("mass", Words.MASSES),
        cells.text("votiveOf"),
        cells.word("leave", Words.LEAVES),
        cells.name("celebration", Form.KEY),
        cells.word("colour", Words.COLOURS),
        cells.name("celebrant", Form.PERSON),
        cells.number("concelebrants", Range.MINISTERS, 0),
        cells.number("deacons", Range.MINISTERS, 0),
        cells.all("named", Form.PERSON::find, Form.PERSON::wanted),
        cells.all("brings", Bringing::find, Bringing::wanted),
        cells.flag("bishop"),
        cells.all("ministers", MinistersEntry::find, MinistersEntry::wanted),
        cells.words("also", Words.BESIDES),
        cells.number("setOutMinutes", Range.CHOSEN_LEAD),
        cells.times("replaces"),
        cells.text("note"),
        cells.text("intention"),
        cells.text("language"),
        cells.all("serving", ServingEntry::find, ServingEntry::wanted));
  }

  private List<String> start() {
    return List.of("%s %s in %s".formatted(date, time, church));
  }
}
