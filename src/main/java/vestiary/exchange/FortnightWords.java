package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;

/**
 * Words for a date in the fortnight that begins on a given Monday, so that the demonstration lists
 * fit whatever week they are brought in. Besides ISO dates they are:
 *
 * <ul>
 *   <li>{@code day+8}, {@code day-3}: so many days after or before that Monday; not bound to the
 *       fortnight.
 *   <li>{@code white}: the first day from Tuesday on, Mondays to Fridays, on which the celebration
 *       kept in that church is white; likewise red, green, violet and black.
 *   <li>{@code white|red|violet}: the first such white day; if there is none the first red one, and
 *       so on.
 *   <li>{@code rose}: the first Sunday on which rose is lawful there, whatever stands first.
 *   <li>{@code rose-1}, {@code white+2}: so many days from such a day.
 * </ul>
 *
 * In the fortnight from Monday 30 November 2026, {@code white} is Thursday 3 December (Saint
 * Francis Xavier), {@code day+8} Tuesday 8 December and {@code rose} Sunday 13 December.
 */
public final class FortnightWords implements DateWords {

  private static final int LENGTH = 14;

  private static final Pattern FORM = Pattern.compile("([a-z|]+)([+-]\\d{1,3})?");

  private final LocalDate monday;
  private final BiFunction<LocalDate, String, List<Colour>> colours;

  /**
   * Words for the fortnight from that Monday.
   *
   * @param colours the colours of the celebration kept on a day in the church of that slug, its
   *     first colour first; none on a day on which no large liturgy of one's own choice is set: one
   *     whose evening belongs to the next day, and Holy Thursday to Holy Saturday
   * @throws IllegalArgumentException if it is another day of the week
   */
  public FortnightWords(LocalDate monday, BiFunction<LocalDate, String, List<Colour>> colours) {
    if (monday.getDayOfWeek() != DayOfWeek.MONDAY) {
      throw new IllegalArgumentException(monday + " is no Monday");
    }
    this.monday = monday;
    this.colours = colours;
  }

  @Override
  public Optional<LocalDate> resolve(String cell, String church) {
    Matcher word = FORM.matcher(cell);
    if (!word.matches()) {
      return ISO.resolve(cell, church);
    }
    int days = word.group(2) == null ? 0 : Integer.parseInt(word.group(2));
    return named(word.group(1), church).map(day -> day.plusDays(days));
  }

  private Optional<LocalDate> named(String word, String church) {
    if (word.equals("day")) {
      return Optional.of(monday);
    }
    return Stream.of(word.split("\\|", -1)).map(FortnightWords::colour).toList().stream()
        .flatMap(colour -> days(colour, church))
        .findFirst();
  }

  private static Colour colour(String word) {
    return Term.find(Colour.class, word)
        .orElseThrow(
            () ->
                new DateTimeException(
                    say("Write year-month-day, or day or a colour with + or - so many days.")));
  }

  private Stream<LocalDate> days(Colour colour, String church) {
    return monday
        .plusDays(1)
        .datesUntil(monday.plusDays(LENGTH))
        .filter(day -> isDayOf(colour, day, colours.apply(day, church)));
  }

  private static boolean isDayOf(Colour colour, LocalDate day, List<Colour> lawful) {
    if (colour == Colour.ROSE) {
      return day.getDayOfWeek() == DayOfWeek.SUNDAY && lawful.contains(colour);
    }
    boolean isWeekday = day.getDayOfWeek().compareTo(DayOfWeek.FRIDAY) <= 0;
    return isWeekday && lawful.indexOf(colour) == 0;
  }
}
