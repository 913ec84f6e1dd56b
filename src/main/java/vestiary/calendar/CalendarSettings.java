package vestiary.calendar;

import java.util.Objects;

/**
 * Which calendar a cluster follows, and what its bishops have settled.
 *
 * <p>{@link EpiphanyOn#DATE} in England and Wales includes their rule that a holy day on a Saturday
 * or Monday is kept on the Sunday beside it.
 *
 * @param calendar the id of an offered calendar, for example {@code us}
 */
public record CalendarSettings(
    String calendar,
    EpiphanyOn epiphany,
    AscensionOn ascension,
    CorpusChristiOn corpusChristi,
    Evenings evenings) {

  public CalendarSettings {
    Objects.requireNonNull(calendar);
    Objects.requireNonNull(epiphany);
    Objects.requireNonNull(ascension);
    Objects.requireNonNull(corpusChristi);
    Objects.requireNonNull(evenings);
  }

  /**
   * The options a calendar begins with.
   *
   * @throws IllegalArgumentException if no calendar has this id
   */
  public static CalendarSettings defaultsOf(String calendar) {
    return OfferedCalendars.get(calendar).defaults();
  }

  /**
   * The options a calendar had in a year, where its bishops have settled them otherwise since.
   *
   * @throws IllegalArgumentException if no calendar has this id
   */
  public static CalendarSettings defaultsOf(String calendar, int year) {
    return FormerOptions.in(year, defaultsOf(calendar));
  }

  /** The same with what the evenings are settled by. */
  public CalendarSettings with(Evenings settled) {
    return new CalendarSettings(calendar, epiphany, ascension, corpusChristi, settled);
  }
}
