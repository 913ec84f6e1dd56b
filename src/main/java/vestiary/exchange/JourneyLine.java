package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;

/**
 * A journey between two churches, as a line gives it.
 *
 * @param line physical line in the file
 * @param from slug of the church left
 * @param to slug of the church reached, another one
 * @param minutes minutes on the road
 * @param oneWay whether the way back is not meant
 */
record JourneyLine(int line, String from, String to, int minutes, boolean oneWay) {

  static final List<Column> COLUMNS =
      List.of(
          required("from", word("Church left, by its short name")),
          required("to", word("Church reached, by its short name")),
          required("minutes", word("Minutes on the road, 1 to 1440")),
          optional(
              "oneWay",
              word("Whether the way back takes another time or is on a line of its own")));

  static Reading<JourneyLine> read(CsvTable table) {
    return table.read(JourneyLine::parse).unique("to", JourneyLine::line, JourneyLine::ways);
  }

  static Reading<JourneyLine> parse(CsvLine line) {
    Cells cells = new Cells(line, COLUMNS);
    JourneyLine journey =
        new JourneyLine(
            cells.line(),
            cells.name("from", Form.CHURCH),
            cells.name("to", Form.CHURCH),
            cells.number("minutes", Range.JOURNEY),
            cells.flag("oneWay"));
    if (!journey.to().isEmpty() && journey.from().equals(journey.to())) {
      cells.refuse("to", say("Write another church than in the column from."));
    }
    return cells.reading(() -> journey);
  }

  private List<String> ways() {
    String there = from + " to " + to;
    return oneWay ? List.of(there) : List.of(there, to + " to " + from);
  }
}
