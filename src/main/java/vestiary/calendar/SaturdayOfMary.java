package vestiary.calendar;

import java.time.DayOfWeek;
import java.util.List;

/**
 * The memorial of the Blessed Virgin that may be kept on a Saturday of Ordinary Time without an
 * obligatory memorial. Saturday 20 June 2026 is such a day. Source: UNLY 15.
 */
final class SaturdayOfMary {

  static final Celebration CELEBRATION =
      new Celebration(
          "saturday-memorial-of-mary",
          new LocalName(
              "Saturday Memorial of the Blessed Virgin Mary",
              "Sanctae Mariae in sabbato",
              "Santa María en sábado"),
          Rank.OPTIONAL_MEMORIAL,
          Precedence.OPTIONAL_MEMORIAL,
          List.of(Colour.WHITE),
          "UNLY 15; " + Precedence.OPTIONAL_MEMORIAL.source(),
          new Reason(Sentence.of("White, for the Blessed Virgin Mary."), "GIRM 346 a"));

  private SaturdayOfMary() {}

  static boolean mayBeKept(YearPlan plan, int day, Celebration season) {
    return season.precedence() == Precedence.ORDINARY_WEEKDAY
        && plan.year().weekday(day) == DayOfWeek.SATURDAY;
  }
}
