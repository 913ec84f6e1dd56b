package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Days on which a piece or a set cannot be used, as a line gives them.
 *
 * @param line physical line in the file
 * @param piece code of the piece; empty if a set is meant
 * @param set code of the set; empty if a piece is meant
 * @param from first day it is away
 * @param to last day it is away, {@link LocalDate#MAX} until further notice
 * @param kind id of what is wrong with it; empty if left out
 * @param due day it was promised back, {@link LocalDate#MAX} if left out
 */
record CareLine(
    int line,
    String piece,
    String set,
    LocalDate from,
    LocalDate to,
    LocalDate due,
    String reason,
    String kind) {

  static final List<Column> COLUMNS =
      List.of(
          optional("piece", word("Code of the piece; a line has either a piece or a set")),
          optional("set", word("Code of the set, for all its pieces")),
          required("from", word("First day it is away")),
          optional("to", word("Last day it is away; empty is until further notice")),
          optional("due", word("Day it was promised back, where it is still awaited")),
          required("reason", word("Why, in words")),
          optional(
              "kind",
              word(
                  "What is wrong with it: mending, cleaner, stain, missing-button, missing or other; with a kind it is away until somebody says that it is back")));

  static Reading<CareLine> read(CsvTable table, DateWords words) {
    return table.read(line -> parse(line, words)).unique("from", CareLine::line, CareLine::start);
  }

  static Reading<CareLine> parse(CsvLine line, DateWords words) {
    Cells cells = new Cells(line, COLUMNS);
    Optional<LocalDate> from = cells.date("from", words, "");
    CareLine care =
        new CareLine(
            cells.line(),
            cells.name("piece", Form.CODE),
            cells.name("set", Form.CODE),
            from.orElse(LocalDate.MIN),
            cells.date("to", words, "").orElse(LocalDate.MAX),
            cells.date("due", words, "").orElse(LocalDate.MAX),
            cells.text("reason"),
            cells.word("kind", Words.CARE_KINDS));
    check(cells, care);
    Reading<CareLine> reading = cells.reading(() -> care);
    return reading.isGood() && from.isEmpty() ? Reading.nothing() : reading;
  }

  private static void check(Cells cells, CareLine care) {
    if (cells.has("piece") == cells.has("set")) {
      cells.refuse("piece", say("Fill in either the column piece or the column set."));
    }
    if (care.to().isBefore(care.from())) {
      cells.refuse("to", say("Write a day on or after the first, %s.", cells.text("from")));
    }
    if (care.due().isBefore(care.from())) {
      cells.refuse("due", say("Write a day on or after the first, %s.", cells.text("from")));
    }
  }

  private List<String> start() {
    return List.of("%s%s from %s".formatted(piece, set, from));
  }
}
