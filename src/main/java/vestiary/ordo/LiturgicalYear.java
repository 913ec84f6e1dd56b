package vestiary.ordo;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.TemporalAdjusters;
import java.util.Optional;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * A year from the First Sunday of Advent to the Saturday before the next one, called by the civil
 * year in which most of it falls: 2027 is 29 November 2026 to 27 November 2027. Source: UNLY 40.
 *
 * @param number {@link #FIRST} to {@link #LAST}
 */
record LiturgicalYear(int number) {

  /** The first whose Advent the calendar knows. */
  static final int FIRST = LiturgicalCalendar.FIRST.getYear() + 1;

  /** The last that the calendar knows to its end. */
  static final int LAST = LiturgicalCalendar.LAST.getYear();

  /** The earliest date of the First Sunday of Advent, which falls on or nearest to 30 November. */
  private static final int EARLIEST_OF_NOVEMBER = 27;

  LiturgicalYear {
    if (!isKnown(number)) {
      throw new IllegalArgumentException("The calendar holds no liturgical year " + number + ".");
    }
  }

  /** The year in which this date lies. */
  static LiturgicalYear of(LocalDate date) {
    boolean isNext = !date.isBefore(firstSundayOfAdvent(date.getYear()));
    return new LiturgicalYear(date.getYear() + (isNext ? 1 : 0));
  }

  /**
   * The year that an address names.
   *
   * @throws Refused if it is no year or one that the calendar does not hold
   */
  static LiturgicalYear parse(String text) {
    if (text.matches("\\d{4}") && isKnown(Integer.parseInt(text))) {
      return new LiturgicalYear(Integer.parseInt(text));
    }
    throw new Refused(
        new Refusal.Beyond(
            say(
                "There is no liturgical year \"%s\" here; the calendar holds those from %d to %d.",
                text, FIRST, LAST)));
  }

  /** The First Sunday of Advent. */
  LocalDate first() {
    return firstSundayOfAdvent(number - 1);
  }

  /** The Saturday before the next Advent. */
  LocalDate last() {
    return firstSundayOfAdvent(number).minusDays(1);
  }

  boolean holds(LocalDate date) {
    return !date.isBefore(first()) && !date.isAfter(last());
  }

  /** The year before, if the calendar holds it. */
  Optional<LiturgicalYear> findBefore() {
    return find(number - 1);
  }

  /** The year after, if the calendar holds it. */
  Optional<LiturgicalYear> findAfter() {
    return find(number + 1);
  }

  private static Optional<LiturgicalYear> find(int number) {
    return isKnown(number) ? Optional.of(new LiturgicalYear(number)) : Optional.empty();
  }

  private static boolean isKnown(int number) {
    return number >= FIRST && number <= LAST;
  }

  private static LocalDate firstSundayOfAdvent(int civilYear) {
    return LocalDate.of(civilYear, Month.NOVEMBER, EARLIEST_OF_NOVEMBER)
        .with(TemporalAdjusters.nextOrSame(DayOfWeek.SUNDAY));
  }
}
