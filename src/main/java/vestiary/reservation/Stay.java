package vestiary.reservation;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.pool.Care;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;

/**
 * A time that a piece spends somewhere.
 *
 * @param masses the Mass it is there for, or none
 * @param until half-open end; {@link Instant#MAX} until further notice
 */
record Stay(ChurchId church, List<MassId> masses, Instant from, Instant until, Cause cause) {

  /** What it is there for. */
  sealed interface Cause {

    /** What keeps the piece from a Mass at that time; empty if a hold goes before it. */
    Optional<Availability> findHindrance(String piece);

    /** What a plan has it do there, if that is what it is. */
    default Optional<PlannedWear> findPlanned() {
      return Optional.empty();
    }
  }

  record Worn(PlannedWear planned) implements Cause {
    @Override
    public Optional<PlannedWear> findPlanned() {
      return Optional.of(planned);
    }

    @Override
    public Optional<Availability> findHindrance(String piece) {
      return Optional.empty();
    }
  }

  record Aside(SetAside held) implements Cause {
    @Override
    public Optional<Availability> findHindrance(String piece) {
      return Optional.of(new Availability.Held(piece, held));
    }
  }

  record Cared(Care care) implements Cause {
    @Override
    public Optional<Availability> findHindrance(String piece) {
      return Optional.of(new Availability.InCare(piece, care));
    }
  }

  /** All of one piece, in no order. Whatever leaves the cluster leaves from home and comes back. */
  static List<Stay> of(PooledPiece piece, Taken taken) {
    Stream<Stay> worn =
        taken.planned().stream()
            .filter(one -> one.piece().equals(piece.code()))
            .map(
                one ->
                    new Stay(
                        one.church(),
                        List.of(one.wearer().mass()),
                        one.from(),
                        one.until(),
                        new Worn(one)));
    Stream<Stay> aside =
        taken.setAside().stream()
            .filter(one -> one.piece().equals(piece.code()))
            .map(
                one ->
                    new Stay(
                        one.churches().stream().findFirst().orElse(piece.home()),
                        one.masses(),
                        one.from(),
                        one.until(),
                        new Aside(one)));
    Stream<Stay> cared =
        piece.care().stream()
            .map(
                one ->
                    new Stay(
                        piece.home(),
                        List.of(),
                        one.from(),
                        one.findEnd().orElse(Instant.MAX),
                        new Cared(one)));
    return Stream.of(worn, aside, cared).flatMap(some -> some).toList();
  }

  /** Whether a plan has it there, which a hold may change. */
  boolean isPlanned() {
    return cause instanceof Worn;
  }

  /** Whether some moment belongs to it and to the half-open span; touching is not enough. */
  boolean isDuring(Instant first, Instant end) {
    return from.isBefore(end) && until.isAfter(first);
  }

  /** Whether it was taken out already, and so ends when it is brought back. */
  boolean isOut() {
    return cause instanceof Aside aside && aside.held().word().equals(ReservationState.OUT.id());
  }
}
