package vestiary.calendar;

import java.time.LocalDate;
import java.time.LocalDateTime;

/** Which Mass an hour points to, and which day a Mass belongs to. Source: UNLY 3, 11, 18 to 21. */
final class MassTimes {

  private MassTimes() {}

  /** The Mass that is said at this hour when none was chosen. */
  static MassKind kindAt(Day day, boolean evening) {
    if (isGoodFriday(day)) return MassKind.GOOD_FRIDAY;
    if (isHolyThursday(day)) return evening ? MassKind.LORDS_SUPPER : MassKind.OF_THE_DAY;
    if (!evening || !day.evening().tomorrow()) return MassKind.OF_THE_DAY;
    return isHolySaturday(day) ? MassKind.EASTER_VIGIL : MassKind.ANTICIPATED;
  }

  /** A Vigil that begins before dawn is on Easter Sunday already. */
  static LocalDate liturgicalDate(LocalDateTime start, MassKind kind, Day day) {
    boolean next =
        kind == MassKind.ANTICIPATED || kind == MassKind.EASTER_VIGIL && !isEasterSunday(day);
    return next ? start.toLocalDate().plusDays(1) : start.toLocalDate();
  }

  static boolean isGoodFriday(Day day) {
    return day.kept().id().equals("good-friday");
  }

  static boolean isHolySaturday(Day day) {
    return day.kept().id().equals("holy-saturday");
  }

  static boolean isHolyThursday(Day day) {
    return HolyThursday.is(day.kept());
  }

  static boolean isEasterSunday(Day day) {
    return day.kept().id().equals("easter-sunday");
  }
}
