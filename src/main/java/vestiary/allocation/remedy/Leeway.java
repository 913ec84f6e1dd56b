package vestiary.allocation.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * How far remedies may go beyond what a situation says.
 *
 * @param mostShift how much earlier or later a Mass may start; zero if no hour may be touched
 * @param colours other lawful colours of Masses
 * @param taken when a Mass cannot be, though its vestments could
 */
public record Leeway(Duration mostShift, List<Change.ChooseColour> colours, List<Taken> taken) {

  public Leeway {
    Objects.requireNonNull(mostShift, "mostShift");
    colours = List.copyOf(colours);
    taken = List.copyOf(taken);
  }

  /** Other hours alone. */
  public static Leeway ofHours(Duration mostShift) {
    return new Leeway(mostShift, List.of(), List.of());
  }

  /**
   * A time in which a Mass cannot be: its church has another, or its celebrant is elsewhere.
   *
   * @param from included
   * @param until excluded
   */
  public record Taken(MassId mass, Instant from, Instant until) {}

  boolean allows(Change.MoveStart move, Window window) {
    Instant start = window.start().plus(move.by());
    Instant end = window.end().plus(move.by());
    return move.by().abs().compareTo(mostShift) <= 0
        && taken.stream()
            .filter(time -> time.mass().equals(move.mass()))
            .noneMatch(time -> time.from().isBefore(end) && start.isBefore(time.until()));
  }
}
