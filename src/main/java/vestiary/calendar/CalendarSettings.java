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
    EveningRule eveningRule) {

  public CalendarSettings {
    Objects.requireNonNull(calendar);
    Objects.requireNonNull(epiphany);
    Objects.requireNonNull(ascension);
    Objects.requireNonNull(corpusChristi);
    Objects.requireNonNull(eveningRule);
  }

  /**
   * The options a calendar begins with.
   *
   * @throws IllegalArgumentException if no calendar has this id
   */
  public static CalendarSettings defaultsOf(String calendar) {
    return OfferedCalendars.get(calendar).defaults();
  }
}
