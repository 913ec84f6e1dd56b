package vestiary.pool;

import java.time.Instant;
import java.util.List;

/** What is planned and what is set aside over some time, care left aside; by start, then code. */
public record Taken(List<PlannedWear> planned, List<SetAside> setAside) {

  /** Nothing at all. */
  public static final Taken NOTHING = new Taken(List.of(), List.of());

  public Taken {
    planned = List.copyOf(planned);
    setAside = List.copyOf(setAside);
  }

  /** What stands in some part of the half-open span. */
  public Taken between(Instant from, Instant to) {
    return new Taken(
        planned.stream()
            .filter(one -> one.from().isBefore(to) && one.until().isAfter(from))
            .toList(),
        setAside.stream()
            .filter(one -> one.from().isBefore(to) && one.until().isAfter(from))
            .toList());
  }
}
