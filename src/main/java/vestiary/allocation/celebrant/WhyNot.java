package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** Why a priest cannot celebrate a Mass. */
public sealed interface WhyNot {

  /** He is away. */
  record Away(Absence absence) implements WhyNot {}

  /** He does not serve in that church, or not on that day of the week. */
  record NotServed(Stay stay) implements WhyNot {}

  /**
   * He is elsewhere before it, or at that time.
   *
   * @param earliest at which he could begin here
   */
  record Before(Stay stay, Duration journey, Instant earliest) implements WhyNot {}

  /**
   * He is elsewhere after it.
   *
   * @param latest start here from which he could be there in time
   */
  record After(Stay stay, Duration journey, Instant latest) implements WhyNot {}

  /** He is elsewhere before or after it, and no way is known. */
  record NoRoad(Stay stay) implements WhyNot {}

  /**
   * It would be one Mass too many for that day.
   *
   * @param number this one would be his
   * @param most he may or will celebrate
   * @param own whether it is his own bound, the leave on file being wider
   * @param others his Masses of that day
   */
  record TooMany(CountedDay day, int number, int most, boolean own, List<Stay> others)
      implements WhyNot {

    public TooMany {
      others = List.copyOf(others);
    }
  }
}
