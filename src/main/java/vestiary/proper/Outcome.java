package vestiary.proper;

import static vestiary.web.Speech.say;

import java.time.LocalDate;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.calendar.Celebration;
import vestiary.calendar.Day;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.calendar.Omission;
import vestiary.calendar.Rank;
import vestiary.calendar.Transfer;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/**
 * What becomes of a celebration in one church.
 *
 * @param ownDay on which it would be if nothing stood in its way
 * @param sentence when it is kept, or why it is not
 */
record Outcome(LocalDate ownDay, String sentence) {

  /**
   * The first that becomes of it in a stretch of days; empty if its day is in none of them.
   *
   * @param first first date, included
   * @param last last date, included
   */
  static Optional<Outcome> find(
      String celebration, LiturgicalCalendar calendar, LocalDate first, LocalDate last) {
    return calendar.days(first, last).stream()
        .flatMap(day -> on(day, celebration, calendar).stream())
        .findFirst();
  }

  private static Optional<Outcome> on(Day day, String celebration, LiturgicalCalendar calendar) {
    return Stream.of(
            kept(day, celebration, calendar), offered(day, celebration), missed(day, celebration))
        .flatMap(Optional::stream)
        .findFirst();
  }

  private static Optional<Outcome> kept(Day day, String celebration, LiturgicalCalendar calendar) {
    if (!day.kept().id().equals(celebration)) {
      return Optional.empty();
    }
    Optional<Outcome> moved =
        day.transfers().stream()
            .findFirst()
            .map(Transfer::from)
            .flatMap(from -> missed(calendar.day(from), celebration));
    return moved.or(
        () -> Optional.of(new Outcome(day.date(), say("Kept on %s.", spelled(day.date())))));
  }

  private static Optional<Outcome> offered(Day day, String celebration) {
    return day.celebrations().stream()
        .skip(1)
        .filter(c -> c.id().equals(celebration))
        .findFirst()
        .map(c -> new Outcome(day.date(), offer(c, day.date())));
  }

  private static String offer(Celebration celebration, LocalDate date) {
    return celebration.rank() == Rank.COMMEMORATION
        ? say("On %s its collect may be said; Mass and colour are the weekday’s.", spelled(date))
        : say("May be kept on %s.", spelled(date));
  }

  private static Optional<Outcome> missed(Day day, String celebration) {
    return day.omitted().stream()
        .filter(omission -> omission.id().equals(celebration))
        .findFirst()
        .map(omission -> new Outcome(day.date(), why(omission, day.date())));
  }

  private static String why(Omission omission, LocalDate date) {
    return say("Its day is %s. %s", spelled(date), NormWords.of(omission.why()));
  }

  private static String spelled(LocalDate date) {
    return say("%s %d", Speech.day(date), date.getYear());
  }
}
