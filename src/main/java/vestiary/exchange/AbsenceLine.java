package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.exchange.Column.required;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import vestiary.people.SaveAbsence;

/**
 * Days on which a person is not available, as a line gives them.
 *
 * @param line physical line in the file
 * @param person key of the person
 * @param from first day
 * @param to last day, {@link LocalDate#MAX} until further notice
 * @param reason empty if left out
 */
record AbsenceLine(int line, String person, LocalDate from, LocalDate to, String reason) {

  static final List<Column> COLUMNS =
      List.of(
          required("person", word("Person, by the key")),
          required("from", word("First day the person is not available")),
          optional("to", word("Last such day; empty is until further notice")),
          optional(
              "reason",
              word("Why; read by administrators and pastors alone, and best left empty")));

  static Reading<AbsenceLine> read(CsvTable table, DateWords words) {
    return table
        .read(line -> parse(line, words))
        .unique("from", AbsenceLine::line, AbsenceLine::start);
  }

  static Reading<AbsenceLine> parse(CsvLine line, DateWords words) {
    Cells cells = new Cells(line, COLUMNS);
    Optional<LocalDate> from = cells.date("from", words, "");
    AbsenceLine absence =
        new AbsenceLine(
            cells.line(),
            cells.name("person", Form.PERSON),
            from.orElse(LocalDate.MIN),
            cells.date("to", words, "").orElse(LocalDate.MAX),
            cells.text("reason"));
    if (absence.to().isBefore(absence.from())) {
      cells.refuse("to", say("Write a day on or after the first, %s.", cells.text("from")));
    }
    Reading<AbsenceLine> reading = cells.reading(() -> absence);
    return reading.isGood() && from.isEmpty() ? Reading.nothing() : reading;
  }

  SaveAbsence.Request toRequest() {
    return new SaveAbsence.Request(
        from.toString(), to.equals(LocalDate.MAX) ? null : to.toString(), reason);
  }

  private List<String> start() {
    return List.of("%s from %s".formatted(person, from));
  }
}
