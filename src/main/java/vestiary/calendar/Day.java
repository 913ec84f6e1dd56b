package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * One date in one church, with all that can be celebrated on it.
 *
 * @param week of the season: none (0) in Christmas Time, 0 from Ash Wednesday to the Saturday
 *     after, 6 in Holy Week, 1 in the Easter octave, 8 on Pentecost, 1 to 34 in Ordinary Time
 * @param psalterWeek of the Liturgy of the Hours, 1 to 4
 * @param celebrations never empty; the first is kept unless another is chosen
 * @param omitted what would have been celebrated and is not, and what went to another date
 * @param transfers how the kept celebration came here from another date; empty if it is its own
 */
public record Day(
    LocalDate date,
    Season season,
    int week,
    int psalterWeek,
    SundayCycle sundayCycle,
    WeekdayCycle weekdayCycle,
    Duty duty,
    List<Celebration> celebrations,
    List<Omission> omitted,
    List<Transfer> transfers,
    Evening evening) {

  /** The first year whose days are exact; before it, norms that changed are applied as of now. */
  public static final int FIRST_EXACT_YEAR = 2008;

  public Day {
    Objects.requireNonNull(date);
    Objects.requireNonNull(season);
    if (week < 0 || week > 34) throw new IllegalArgumentException("There is no week " + week);
    if (psalterWeek < 1 || psalterWeek > 4) {
      throw new IllegalArgumentException("The psalter has no week " + psalterWeek);
    }
    Objects.requireNonNull(sundayCycle);
    Objects.requireNonNull(weekdayCycle);
    Objects.requireNonNull(duty);
    celebrations = List.copyOf(celebrations);
    if (celebrations.isEmpty()) throw new IllegalArgumentException(date + " has no celebration.");
    omitted = List.copyOf(omitted);
    transfers = List.copyOf(transfers);
    Objects.requireNonNull(evening);
  }

  /** The celebration that is kept unless another is chosen. */
  public Celebration kept() {
    return celebrations.get(0);
  }

  /** Whether the faithful are bound to take part in Mass, Sundays included. */
  public boolean obligation() {
    return duty.obliges();
  }

  /** Which celebration is kept and in which colour, and why: one plain sentence. */
  public String reason() {
    return why().english();
  }

  /** The same, with its values apart. */
  public Sentence why() {
    return DayReasons.sentence(this);
  }

  /** The rules that decided the day, one after another, each with its norm; never empty. */
  public List<Reason> reasons() {
    return DayReasons.chain(this);
  }

  /**
   * Whether a norm that bears on this day changed before {@link #FIRST_EXACT_YEAR}, so that it is
   * shown by present norms and may have been kept otherwise.
   */
  public boolean isByPresentNorms() {
    return ChangedNorms.bearOn(this);
  }
}
