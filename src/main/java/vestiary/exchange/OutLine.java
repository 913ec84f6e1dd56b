package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A piece or a set that is out and not back, as a line gives it.
 *
 * @param line physical line in the file
 * @param piece code of the piece; empty if a set is meant
 * @param set code of the set; empty if a piece is meant
 * @param church slug of the church where it is; empty if it is outside the cluster
 * @param whom who has it outside the cluster; empty if a church is named
 * @param from day it went
 * @param due last day on which it may come back
 */
record OutLine(
    int line,
    String piece,
    String set,
    String church,
    String whom,
    LocalDate from,
    LocalDate due,
    String carrier,
    String condition) {

  static final List<Column> COLUMNS =
      List.of(
          optional("piece", word("Code of the piece; a line has either a piece or a set")),
          optional("set", word("Code of the set, for all its pieces")),
          optional(
              "church",
              word("Church where it is, by its short name; a line has either a church or whom")),
          optional("whom", word("Who has it outside the cluster, for example the cathedral")),
          required("from", word("Day it went")),
          required("due", word("Last day on which it may come back")),
          optional("carrier", word("Who carried it")),
          optional("condition", word("Condition in which it went; empty is that of the piece")));

  static Reading<OutLine> read(CsvTable table, DateWords words) {
    return table.read(line -> parse(line, words)).unique("piece", OutLine::line, OutLine::what);
  }

  static Reading<OutLine> parse(CsvLine line, DateWords words) {
    Cells cells = new Cells(line, COLUMNS);
    Optional<LocalDate> from = cells.date("from", words, "");
    OutLine out =
        new OutLine(
            cells.line(),
            cells.name("piece", Form.CODE),
            cells.name("set", Form.CODE),
            cells.name("church", Form.CHURCH),
            cells.text("whom"),
            from.orElse(LocalDate.MIN),
            cells.date("due", words, "").orElse(LocalDate.MAX),
            cells.text("carrier"),
            cells.text("condition"));
    check(cells, out);
    Reading<OutLine> reading = cells.reading(() -> out);
    return reading.isGood() && from.isEmpty() ? Reading.nothing() : reading;
  }

  private static void check(Cells cells, OutLine out) {
    if (cells.has("piece") == cells.has("set")) {
      cells.refuse("piece", say("Fill in either the column piece or the column set."));
    }
    if (cells.has("church") == cells.has("whom")) {
      cells.refuse("church", say("Fill in either the column church or the column whom."));
    }
    if (out.due().isBefore(out.from())) {
      cells.refuse("due", say("Write a day on or after the first, %s.", cells.text("from")));
    }
  }

  private List<String> what() {
    return List.of(piece + set);
  }
}
