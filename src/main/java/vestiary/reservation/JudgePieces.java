package vestiary.reservation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.Shortened;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * Whether pieces can be had for one Mass, as things stand. A piece must come from where it is kept
 * before by set-out, and go on after clearance in time for what it is kept for next; in one church
 * it stays out where a turn is left between the two Masses. What a plan has it do is no hindrance:
 * a hold goes before it.
 */
final class JudgePieces {

  private final SpanToCheck span;
  private final DatedMass mass;
  private final Window window;
  private final Set<String> granted;
  private final Instant now;
  private final Map<MassId, DatedMass> masses;

  /**
   * @param span the date of the Mass and no other, what is planned and held around it included
   * @param granted pieces whose owners have said yes for this Mass
   */
  JudgePieces(SpanToCheck span, DatedMass mass, Set<String> granted, Instant now) {
    this.span = span;
    this.mass = mass;
    this.granted = Set.copyOf(granted);
    this.now = now;
    this.window = Window.of(mass.toVestedMass(), span.cluster().policies().vesting());
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
  }

  /** From set-out to clearance. */
  Window window() {
    return window;
  }

  Availability judge(PooledPiece piece) {
    return findOwnersWord(piece).orElseGet(() -> new OfPiece(piece).judge());
  }

  /** In its own church no owner is asked. */
  private Optional<Availability> findOwnersWord(PooledPiece piece) {
    String code = piece.code();
    if (piece.keptFrom().contains(mass.id())) {
      return Optional.of(new Availability.OwnerSaidNo(code, piece.owner()));
    }
    if (piece.home().equals(mass.church().id())) {
      return Optional.empty();
    }
    if (piece.staysHome()) {
      return Optional.of(new Availability.StaysHome(code, piece.home()));
    }
    return switch (piece.ownerPolicy()) {
      case NEVER -> Optional.of(new Availability.OwnerNever(code, piece.owner()));
      case ASKING ->
          granted.contains(code)
              ? Optional.empty()
              : Optional.of(new Availability.OnAsking(code, piece.owner()));
      case FREELY -> Optional.empty();
    };
  }

  private final class OfPiece {

    private final PooledPiece piece;
    private final List<Stay> stays;
    private final List<Shortened> shortened = new ArrayList<>();
    private final List<Stay> handedOver = new ArrayList<>();
    private Instant from = window.setOut();
    private Instant until = window.cleared();

    OfPiece(PooledPiece piece) {
      this.piece = piece;
      this.stays =
          Stay.of(piece, span.taken()).stream().sorted(Comparator.comparing(Stay::from)).toList();
    }

    Availability judge() {
      List<Stay> apart = stays.stream().filter(stay -> !handsOver(stay)).toList();
      return apart.stream()
          .filter(this::overlaps)
          .flatMap(stay -> stay.cause().findHindrance(piece.code()).stream())
          .findFirst()
          .or(this::findLate)
          .or(this::findWantedNext)
          .orElseGet(this::free);
    }

    /**
     * Whether the piece stays out between both Masses, each of which then has a part of the time.
     */
    private boolean handsOver(Stay stay) {
      Optional<DatedMass> other =
          stay.masses().stream().findFirst().map(masses::get).filter(m -> isHere(stay));
      if (other.isEmpty()
          || stay.until().equals(Instant.MAX)
          || other.get().id().equals(mass.id())) {
        return false;
      }
      Duration turn = span.cluster().policies().vesting().turn();
      Instant otherOver = other.get().end().toInstant().plus(turn);
      Instant over = window.end().plus(turn);
      if (!otherOver.isAfter(window.start()) && stay.from().isBefore(otherOver)) {
        return takesOver(stay, otherOver);
      }
      return !over.isAfter(other.get().start().toInstant())
          && stay.until().isAfter(over)
          && handsOn(stay, over);
    }

    /**
     * What is out already ends when it is due; everything else where its Mass and a turn are over.
     */
    private boolean takesOver(Stay stay, Instant otherOver) {
      if (stay.isOut() && stay.until().isAfter(window.start())) {
        return false;
      }
      if (stay.until().isAfter(from)) {
        from = stay.isOut() ? stay.until() : earlier(stay.until(), later(otherOver, from));
        shorten(stay, stay.from(), from);
        handedOver.add(stay);
      }
      return true;
    }

    private boolean handsOn(Stay stay, Instant over) {
      if (stay.isOut()) {
        return false;
      }
      if (stay.from().isBefore(until)) {
        until = later(stay.from(), over);
        shorten(stay, until, stay.until());
        handedOver.add(stay);
      }
      return true;
    }

    private boolean isHere(Stay stay) {
      return stay.church().equals(mass.church().id());
    }

    private void shorten(Stay stay, Instant first, Instant end) {
      if (!first.equals(stay.from()) || !end.equals(stay.until())) {
        shortened.add(new Shortened(piece.code(), stay.from(), first, end));
      }
    }

    private boolean overlaps(Stay stay) {
      return stay.isDuring(from, until);
    }

    private Optional<Availability> findLate() {
      Optional<Stay> before = before();
      ChurchId lies = before.map(Stay::church).orElseGet(this::liesAtFirst);
      if (lies.equals(mass.church().id())) {
        return Optional.empty();
      }
      Optional<Duration> way = way(lies, mass.church().id());
      if (way.isEmpty()) {
        return Optional.of(new Availability.NoJourney(piece.code(), lies));
      }
      boolean late =
          before.map(Stay::until).filter(over -> over.plus(way.get()).isAfter(from)).isPresent();
      if (late) {
        return Optional.of(
            new Availability.TooLate(
                piece.code(), lies, before.map(Stay::until).stream().toList(), way.get()));
      }
      return now.plus(way.get()).isAfter(window.start())
          ? Optional.of(new Availability.TooLate(piece.code(), lies, List.of(), way.get()))
          : Optional.empty();
    }

    private Optional<Availability> findWantedNext() {
      return stays.stream()
          .filter(stay -> !stay.isPlanned() && !stay.from().isBefore(until) && !isHere(stay))
          .findFirst()
          .filter(next -> !reaches(mass.church().id(), until, next))
          .map(
              next ->
                  new Availability.WantedNext(
                      piece.code(),
                      next.church(),
                      next.from(),
                      way(mass.church().id(), next.church()).orElse(Duration.ZERO)));
    }

    private boolean reaches(ChurchId place, Instant since, Stay next) {
      return way(place, next.church())
          .filter(way -> !since.plus(way).isAfter(next.from()))
          .isPresent();
    }

    private Availability free() {
      ChurchId here = mass.church().id();
      ChurchId lies = before().map(Stay::church).orElseGet(this::liesAtFirst);
      List<PlannedWear> displaced = displaced();
      return new Availability.Free(
          piece.code(),
          from,
          until,
          lies,
          way(lies, here).orElse(Duration.ZERO),
          displaced,
          displaced.stream().filter(one -> !one.wearer().mass().equals(mass.id())).toList(),
          shortened);
    }

    /** What is planned at the same time, or too near for the way between. */
    private List<PlannedWear> displaced() {
      ChurchId here = mass.church().id();
      return stays.stream()
          .filter(stay -> !handedOver.contains(stay))
          .filter(
              stay ->
                  overlaps(stay)
                      || (!stay.from().isBefore(until) && !reaches(here, until, stay))
                      || (!stay.until().isAfter(from) && !comesFrom(stay)))
          .flatMap(stay -> stay.cause().findPlanned().stream())
          .toList();
    }

    private boolean comesFrom(Stay stay) {
      return way(stay.church(), mass.church().id())
          .filter(way -> !stay.until().plus(way).isAfter(from))
          .isPresent();
    }

    private Optional<Stay> before() {
      return stays.stream()
          .filter(stay -> !stay.isPlanned())
          .filter(
              stay ->
                  !stay.until().isAfter(from)
                      || (handedOver.contains(stay) && stay.from().isBefore(from)))
          .reduce((first, second) -> second);
    }

    /** Before the first thing of these days that no plan may change. */
    private ChurchId liesAtFirst() {
      Instant start = span.first().minusDays(1).atStartOfDay(span.cluster().zone()).toInstant();
      return span.lies(piece.toPiece(), start);
    }

    private Optional<Duration> way(ChurchId one, ChurchId other) {
      return one.equals(other) ? Optional.of(Duration.ZERO) : span.journeys().find(one, other);
    }
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }

  private static Instant earlier(Instant one, Instant other) {
    return one.isBefore(other) ? one : other;
  }
}
