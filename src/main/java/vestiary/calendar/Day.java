package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * One date in one church, with all that can be celebrated on it.
 *
 * @param week of the season: none (0) in Christmas Time, 0 from Ash Wednesday to the Saturday
 *     after, 6 in Holy Week, 1 in the Easter octave, 8 on Pentecost, 1 to 34 in Ordinary Time
 * @param obligation whether the faithful are bound to take part in Mass, Sundays included
 * @param celebrations never empty; the first is kept unless another is chosen
 * @param reason which celebration is kept and in which colour, and why: one sentence
 */
public record Day(
    LocalDate date,
    Season season,
    int week,
    SundayCycle sundayCycle,
    WeekdayCycle weekdayCycle,
    boolean obligation,
    List<Celebration> celebrations,
    List<Omission> omitted,
    Evening evening,
    String reason) {

  public Day {
    Objects.requireNonNull(date);
    Objects.requireNonNull(season);
    if (week < 0 || week > 34) throw new IllegalArgumentException("There is no week " + week);
    Objects.requireNonNull(sundayCycle);
    Objects.requireNonNull(weekdayCycle);
    celebrations = List.copyOf(celebrations);
    if (celebrations.isEmpty()) throw new IllegalArgumentException(date + " has no celebration.");
    omitted = List.copyOf(omitted);
    Objects.requireNonNull(evening);
    Objects.requireNonNull(reason);
  }

  /** The celebration that is kept unless another is chosen. */
  public Celebration kept() {
    return celebrations.get(0);
  }
}
