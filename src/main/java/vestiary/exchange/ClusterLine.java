package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import vestiary.calendar.AscensionOn;
import vestiary.calendar.CorpusChristiOn;
import vestiary.calendar.EpiphanyOn;
import vestiary.calendar.EveningRule;
import vestiary.calendar.OpenEvening;
import vestiary.cluster.CountBy;
import vestiary.vesting.LadderOrder;

/**
 * The settings of a cluster, as its one line gives them.
 *
 * @param line physical line in the file
 * @param calendar id of a calendar; whether there is such a one is not asked here
 * @param languages language codes, the first shown where nobody chose; 1 or more
 * @param settings the other settings that are filled in, by the name of their column: numbers in
 *     digits, times as 16:00, words in small letters, yes and no as true and false
 */
record ClusterLine(
    int line,
    String name,
    String calendar,
    ZoneId timeZone,
    List<String> languages,
    Map<String, String> settings) {

  static final List<Column> COLUMNS =
      List.of(
          required("name", word("Name of the cluster")),
          required("calendar", word("Calendar that is kept, by its id, for example general or us")),
          optional("epiphany", word("Epiphany: date or sunday")),
          optional("ascension", word("Ascension: thursday or sunday")),
          optional("corpusChristi", word("Corpus Christi: thursday or sunday")),
          required("timeZone", word("Time zone by its IANA name, for example America/Chicago")),
          required(
              "languages",
              word(
                  "Languages: en, es, or both with a bar between; the first is shown where nobody chose")),
          optional(
              "anticipatedFrom", word("Time from which a Saturday or eve Mass is anticipated")),
          optional(
              "eveningRule",
              word("What decides between two days for an evening Mass: precept or rank")),
          optional(
              "openEvening",
              word("Whose Mass is taken on an evening that no law settles: solemnity or weekday")),
          optional(
              "ladderOrder",
              word("Which substitute for a concelebrant's chasuble comes first: stole or white")),
          optional(
              "whiteForAll", word("Whether all may wear white at a big liturgy of another colour")),
          optional(
              "turnMinutes",
              word(
                  "Minutes between two Masses in one church for which one set may serve, 0 to 60")),
          optional(
              "weekdaySetOut",
              word("Minutes before a weekday Mass by which vestments are set out, 0 to 240")),
          optional(
              "largeSetOut",
              word("Minutes before a large liturgy by which they are set out, 0 to 240")),
          optional(
              "largeClearance",
              word("Minutes after a large liturgy until vestments are put away, 0 to 240")),
          optional(
              "countBy",
              word("Which day a priest's Masses are counted by: calendar or liturgical")),
          optional("permittedWeekday", word("Masses a priest may celebrate on a weekday, 1 to 9")),
          optional(
              "permittedSunday",
              word("Masses a priest may celebrate on a Sunday or holy day, 1 to 9")),
          optional(
              "countAlbs",
              word(
                  "Whether albs, amices and cinctures are counted in a church that keeps them by list")),
          optional(
              "pontificals",
              word(
                  "Whether a bishop's mitre, his dalmatic under the chasuble and two vimpas are counted")));

  private static final Map<String, Words> CHOICES =
      Map.of(
          "epiphany", Words.of(EpiphanyOn.class),
          "ascension", Words.of(AscensionOn.class),
          "corpusChristi", Words.of(CorpusChristiOn.class),
          "eveningRule", Words.of(EveningRule.class),
          "openEvening", Words.of(OpenEvening.class),
          "ladderOrder", Words.of(LadderOrder.class),
          "countBy", Words.of(CountBy.class));

  private static final Map<String, Range> NUMBERS =
      Map.of(
          "turnMinutes", Range.TURN,
          "weekdaySetOut", Range.LEAD,
          "largeSetOut", Range.LEAD,
          "largeClearance", Range.LEAD,
          "permittedWeekday", Range.PERMITTED,
          "permittedSunday", Range.PERMITTED);

  ClusterLine {
    languages = List.copyOf(languages);
    settings = Map.copyOf(settings);
  }

  static Reading<ClusterLine> read(CsvTable table) {
    Reading<ClusterLine> lines = table.read(ClusterLine::parse);
    return lines.unique("name", ClusterLine::line, line -> List.of(say("the cluster")));
  }

  static Reading<ClusterLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    String calendar = cells.name("calendar", Form.KEY);
    List<String> languages = cells.words("languages", Words.LANGUAGES);
    Map<String, String> settings = settings(cells);
    checkTimeZone(cells);
    return cells.reading(
        () ->
            new ClusterLine(
                cells.line(),
                cells.text("name"),
                calendar,
                ZoneId.of(cells.text("timeZone")),
                languages,
                settings));
  }

  private static void checkTimeZone(Cells cells) {
    if (cells.has("timeZone") && !ZoneId.getAvailableZoneIds().contains(cells.text("timeZone"))) {
      cells.refuse(
          "timeZone", say("Write the IANA name of a time zone, for example America/Chicago."));
    }
  }

  private static Map<String, String> settings(Cells cells) {
    Map<String, String> said = new HashMap<>();
    COLUMNS.stream()
        .map(Column::name)
        .filter(cells::has)
        .forEach(column -> said.put(column, setting(cells, column)));
    said.values().removeIf(String::isEmpty);
    return said;
  }

  /** Empty if the column is no setting of this kind. */
  private static String setting(Cells cells, String column) {
    if (CHOICES.containsKey(column)) {
      return cells.word(column, CHOICES.get(column));
    }
    if (NUMBERS.containsKey(column)) {
      return String.valueOf(cells.number(column, NUMBERS.get(column)));
    }
    return switch (column) {
      case "whiteForAll", "countAlbs", "pontificals" -> String.valueOf(cells.flag(column));
      case "anticipatedFrom" -> cells.time(column).toString();
      default -> "";
    };
  }
}
