package vestiary.allocation.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * How far remedies may go beyond what a situation says.
 *
 * @param mostShift how much earlier or later a Mass may start; zero if no hour may be touched
 * @param colours other lawful colours of Masses
 * @param taken when a Mass cannot be, though its vestments could
 * @param open who is short as well, at the same Mass or another, and of whom nobody has decided
 *     yet: no journey for them is counted on
 */
public record Leeway(
    Duration mostShift, List<Change.ChooseColour> colours, List<Taken> taken, List<Open> open) {

  public Leeway {
    Objects.requireNonNull(mostShift, "mostShift");
    colours = List.copyOf(colours);
    taken = List.copyOf(taken);
    open = List.copyOf(open);
  }

  /** Other hours alone. */
  public static Leeway ofHours(Duration mostShift) {
    return new Leeway(mostShift, List.of(), List.of(), List.of());
  }

  /**
   * A time in which a Mass cannot be: its church has another, or its celebrant is elsewhere.
   *
   * @param from included
   * @param until excluded
   */
  public record Taken(MassId mass, Instant from, Instant until) {}

  /** A vestment that somebody is short of. */
  public record Open(Wearer wearer, PieceKind kind) {

    /** Those who go without, with the stole that comes with what they are short of. */
    public static List<Open> of(Shortage shortage) {
      return shortage.unserved().stream()
          .flatMap(
              need ->
                  Stream.of(need.kind(), Candidates.mateOf(need.kind()))
                      .distinct()
                      .map(kind -> new Open(need.wearer(), kind)))
          .toList();
    }

    boolean isOf(Need need) {
      return need.wearer().equals(wearer) && need.kind() == kind;
    }
  }

  boolean allows(Change.MoveStart move, Window window) {
    Instant start = window.start().plus(move.by());
    Instant end = window.end().plus(move.by());
    return move.by().abs().compareTo(mostShift) <= 0
        && taken.stream()
            .filter(time -> time.mass().equals(move.mass()))
            .noneMatch(time -> time.from().isBefore(end) && start.isBefore(time.until()));
  }
}
