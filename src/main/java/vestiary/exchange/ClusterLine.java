package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;

import java.time.LocalTime;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The settings of a cluster, as its one line gives them.
 *
 * @param line physical line in the file
 * @param diocese empty if left out
 * @param calendar id of a calendar; whether there is such a one is not asked here
 * @param languages language codes, the first shown where nobody chose; 1 or more
 * @param settings the other settings that are filled in, by the name of their column: numbers in
 *     digits, times as 16:00, words in small letters, yes and no as true and false
 */
record ClusterLine(
    int line,
    String name,
    String diocese,
    String calendar,
    ZoneId timeZone,
    List<String> languages,
    Map<String, String> settings) {

  static final List<Column> COLUMNS =
      List.of(
          required("name", "Name of the cluster"),
          optional("diocese", "Name of the diocese, without the word"),
          required("calendar", "Id of the calendar that is kept, for example general or us"),
          optional("epiphany", "date or sunday"),
          optional("ascension", "thursday or sunday"),
          optional("corpusChristi", "thursday or sunday"),
          required("timeZone", "Time zone by its IANA name, for example America/Chicago"),
          required(
              "languages",
              "en, es, or both with a bar between; the first is shown where nobody chose"),
          optional(
              "anticipatedFrom",
              "Time from which a Saturday or eve Mass is anticipated, 12:00 to 20:00"),
          optional(
              "eveningRule", "precept or rank: what decides between two days for an evening Mass"),
          optional(
              "ladderOrder",
              "stole or white: which substitute for a concelebrant's chasuble comes first"),
          optional("whiteForAll", "Whether all may wear white at a big liturgy of another colour"),
          optional(
              "turnMinutes",
              "Minutes between two Masses in one church for which one set may serve, 0 to 60"),
          optional(
              "weekdaySetOut",
              "Minutes before a weekday Mass by which vestments are set out, 0 to 240"),
          optional("largeSetOut", "The same for a large liturgy, 0 to 240"),
          optional(
              "largeClearance",
              "Minutes after a large liturgy until vestments are put away, 0 to 240"),
          optional("countBy", "calendar or liturgical: which day a priest's Masses are counted by"),
          optional("permittedWeekday", "Masses a priest may celebrate on a weekday, 1 to 4"),
          optional(
              "permittedSunday", "Masses a priest may celebrate on a Sunday or holy day, 1 to 4"));

  private static final LocalTime EARLIEST_EVENING = LocalTime.of(12, 0);
  private static final LocalTime LATEST_EVENING = LocalTime.of(20, 0);

  private static final Map<String, List<String>> CHOICES =
      Map.of(
          "epiphany", List.of("date", "sunday"),
          "ascension", List.of("thursday", "sunday"),
          "corpusChristi", List.of("thursday", "sunday"),
          "eveningRule", List.of("precept", "rank"),
          "ladderOrder", List.of("stole", "white"),
          "countBy", List.of("calendar", "liturgical"));

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

  static Reading<ClusterLine> read(byte[] file) {
    Reading<ClusterLine> lines = CsvTable.parse(file, ImportWhat.CLUSTER).read(ClusterLine::parse);
    return lines.unique("name", ClusterLine::line, line -> List.of("the cluster"));
  }

  static Reading<ClusterLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    String calendar = cells.name("calendar", Form.SLUG);
    List<String> languages = cells.words("languages", Words.LANGUAGES);
    Map<String, String> settings = settings(cells);
    checkTimeZone(cells);
    return cells.reading(
        () ->
            new ClusterLine(
                cells.number(),
                cells.text("name"),
                cells.text("diocese"),
                calendar,
                ZoneId.of(cells.text("timeZone")),
                languages,
                settings));
  }

  private static void checkTimeZone(Cells cells) {
    if (cells.has("timeZone") && !ZoneId.getAvailableZoneIds().contains(cells.text("timeZone"))) {
      cells.refuse("timeZone", "Write the IANA name of a time zone, for example America/Chicago.");
    }
  }

  private static Map<String, String> settings(Cells cells) {
    Map<String, String> said = new LinkedHashMap<>();
    CHOICES.forEach((column, words) -> said.put(column, cells.word(column, words)));
    NUMBERS.forEach(
        (column, range) ->
            said.put(column, cells.has(column) ? "" + cells.number(column, range) : ""));
    said.put("whiteForAll", cells.has("whiteForAll") ? "" + cells.flag("whiteForAll") : "");
    said.put("anticipatedFrom", anticipatedFrom(cells));
    said.values().removeIf(String::isEmpty);
    return said;
  }

  private static String anticipatedFrom(Cells cells) {
    List<LocalTime> from = cells.times("anticipatedFrom");
    if (from.stream().anyMatch(t -> t.isBefore(EARLIEST_EVENING) || t.isAfter(LATEST_EVENING))) {
      cells.refuse(
          "anticipatedFrom",
          "Write a time from %s to %s.".formatted(EARLIEST_EVENING, LATEST_EVENING));
    }
    return from.isEmpty() ? "" : from.get(0).toString();
  }
}
