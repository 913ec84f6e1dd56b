package vestiary.exchange;

import static vestiary.exchange.Column.optional;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import vestiary.schedule.SavePattern;

/** The cells of a recurring Mass that say its days by the calendar and bound them. */
final class PatternBounds {

  static final List<Column> COLUMNS =
      List.of(
          optional("days", word("Days of the calendar in place of a rule, for example holy-days")),
          optional("until", word("Last date, included")),
          optional(
              "seasons",
              word("Seasons it keeps to, with bars between, for example advent; empty is all")),
          optional("months", word("Months it keeps to, 1 to 12, with bars between; empty is all")),
          optional("notInTriduum", word("None from Holy Thursday to Holy Saturday: yes")),
          optional(
              "notOnHolyDays", word("None on holy days of obligation that are no Sundays: yes")),
          optional(
              "school", word("Time of the school year: in-term or in-holidays; empty is always")),
          optional("except", word("Dates left out, between bars")));

  private PatternBounds() {}

  static SavePattern.Bounds read(Cells cells) {
    return new SavePattern.Bounds(
        cells.word("days", Words.LITURGICAL_DAYS),
        cells.date("until", DateWords.ISO, "").map(LocalDate::toString).orElse(""),
        cells.words("seasons", Words.SEASONS),
        cells.all(
            "months", PatternBounds::month, () -> say("Write months as numbers from 1 to 12.")),
        cells.flag("notInTriduum"),
        cells.flag("notOnHolyDays"),
        cells.word("school", Words.SCHOOL_TIMES),
        cells.all(
            "except", PatternBounds::date, () -> say("Write dates as 2026-12-08, between bars.")));
  }

  private static Optional<Integer> month(String text) {
    return text.matches("0?[1-9]|1[0-2]") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
  }

  private static Optional<String> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text).toString());
    } catch (DateTimeException noDate) {
      return Optional.empty();
    }
  }
}
