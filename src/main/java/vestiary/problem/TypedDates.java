package vestiary.problem;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import vestiary.web.Speech;

/**
 * Several dates in one field of a form, as people write them: 24 December 2026, 31.12.2026, 24 de
 * diciembre de 2026. What is a different day in another order of day and month is refused, unless
 * another date beside it tells the order.
 */
public final class TypedDates {

  /** As many parts with commas between as one date has: Thursday, December 24, 2026. */
  private static final int MOST_PARTS = 3;

  /** Room for the two hundred dates that a Mass time may leave out. */
  private static final int LONGEST = 8_000;

  private final String field;
  private final Asked asked;

  private TypedDates(String field, Asked asked) {
    this.field = field;
    this.asked = asked;
  }

  /**
   * The dates in the order in which they are written; what is none is noted with {@code asked} and
   * left out.
   *
   * @param text dates with commas, semicolons, line breaks or "and" between; may be empty
   */
  public static List<LocalDate> read(String field, String text, Asked asked) {
    return new TypedDates(field, asked).read(parts(asked.text(field, text, LONGEST)));
  }

  private List<LocalDate> read(List<String> written) {
    Set<DayOrder> fitting = DayOrder.fitting(written);
    return written.stream()
        .flatMap(
            one -> (fitting.size() == 1 ? fitting.iterator().next().find(one) : find(one)).stream())
        .toList();
  }

  private Optional<LocalDate> find(String written) {
    Optional<LocalDate> dayFirst = DayOrder.DAY_MONTH_YEAR.find(written);
    Optional<LocalDate> monthFirst = DayOrder.MONTH_DAY_YEAR.find(written);
    if (DayOrder.isAmbiguous(written)) {
      asked.fault(
          field,
          say(
              "%s \"%s\" can be read as %s or as %s; write the month as a word, or year, month and day as in 2026-12-08.",
              field,
              written,
              Speech.dateAndYear(dayFirst.orElseThrow()),
              Speech.dateAndYear(monthFirst.orElseThrow())));
      return Optional.empty();
    }
    if (!DayOrder.isDay(written)) {
      asked.fault(
          field,
          say(
              "%s \"%s\" is no date; write it as 24 December 2026, or as 2026-12-24.",
              field, written));
    }
    return dayFirst.or(() -> monthFirst);
  }

  /** Each date; a comma within one parts it no more than the blanks do. */
  private static List<String> parts(String text) {
    List<String> pieces =
        Arrays.stream(text.split("[,;\\n]|\\s(?:and|y|und)\\s"))
            .map(String::strip)
            .filter(piece -> !piece.isEmpty())
            .toList();
    List<String> parts = new ArrayList<>();
    for (int from = 0; from < pieces.size(); ) {
      int length = length(pieces, from);
      parts.addAll(apart(String.join(", ", pieces.subList(from, from + length))));
      from += length;
    }
    return parts;
  }

  /** How many pieces from that one on are one date; one if none are. */
  private static int length(List<String> pieces, int from) {
    for (int length = 1; length <= Math.min(MOST_PARTS, pieces.size() - from); length++) {
      if (DayOrder.isDay(String.join(", ", pieces.subList(from, from + length)))) {
        return length;
      }
    }
    return 1;
  }

  /** Dates with no more than blanks between, where each is one by itself. */
  private static List<String> apart(String written) {
    List<String> words = List.of(written.split("\\s+"));
    return !DayOrder.isDay(written) && words.stream().allMatch(DayOrder::isDay)
        ? words
        : List.of(written);
  }
}
