package vestiary.allocation.celebrant;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.Month;
import java.util.Comparator;
import java.util.Objects;
import vestiary.calendar.Day;
import vestiary.calendar.MassKind;

/**
 * The day on which a Mass counts for whoever celebrates or concelebrates it. Dioceses count by the
 * calendar day or by the liturgical day: the Mass of Saturday evening is Saturday's by the first
 * and Sunday's by the second.
 *
 * @param obliges whether it is a Sunday or a holy day of obligation, on which the ordinary can
 *     permit one Mass more
 * @param byLaw Masses that every priest may celebrate on it without anybody's leave
 */
public record CountedDay(LocalDate date, Portion portion, boolean obliges, int byLaw)
    implements Comparable<CountedDay> {

  private static final int CHRISTMAS = 25;
  private static final String ALL_SOULS = "all-souls";

  /** Christmas and All Souls (GIRM 204 c and d). */
  private static final int THREE = 3;

  private static final Comparator<CountedDay> ORDER =
      Comparator.comparing(CountedDay::date)
          .thenComparing(CountedDay::portion)
          .thenComparing(CountedDay::obliges)
          .thenComparing(CountedDay::byLaw);

  public CountedDay {
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(portion, "portion");
  }

  /**
   * Of a Mass.
   *
   * @param day the one it is counted with: that of its date, or the one whose Mass it is
   */
  public static CountedDay of(MassKind kind, Day day) {
    return new CountedDay(
        day.date(),
        portion(kind),
        day.obligation() || day.date().getDayOfWeek() == DayOfWeek.SUNDAY,
        byLaw(day));
  }

  @Override
  public int compareTo(CountedDay other) {
    return ORDER.compare(this, other);
  }

  private static Portion portion(MassKind kind) {
    return switch (kind) {
      case CHRISM -> Portion.CHRISM;
      case EASTER_VIGIL -> Portion.VIGIL;
      default -> Portion.DAY;
    };
  }

  private static int byLaw(Day day) {
    boolean christmas =
        day.date().getMonth() == Month.DECEMBER && day.date().getDayOfMonth() == CHRISTMAS;
    return christmas || day.kept().id().equals(ALL_SOULS) ? THREE : 1;
  }
}
