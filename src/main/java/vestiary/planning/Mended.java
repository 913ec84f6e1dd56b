package vestiary.planning;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.allocation.Span;
import vestiary.allocation.Stock;
import vestiary.pool.PlannedWear;
import vestiary.pool.SetAside;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Window;

/**
 * What is planned or held counts as being there at set-out. A shortage at one church is mended when
 * every need of it can be given a piece that is planned for its Mass, or one that lies there and is
 * planned nowhere else meanwhile. A Mass that was moved since, or a piece put in care, leaves the
 * plan without effect there, and the shortage stands again.
 */
final class Mended {

  private static final Set<PieceKind> STOLES = Set.of(PieceKind.STOLE, PieceKind.DEACON_STOLE);

  /** A piece at a church for a Mass, from and until as it is kept. */
  private record Place(String piece, MassId mass, ChurchId church, Instant from, Instant until) {}

  private final SpanToCheck span;
  private final Map<String, List<Place>> places;

  private Mended(SpanToCheck span) {
    this.span = span;
    this.places =
        Stream.concat(
                span.taken().planned().stream().map(Mended::place),
                span.taken().setAside().stream()
                    .filter(one -> !one.masses().isEmpty() && !one.churches().isEmpty())
                    .map(Mended::place))
            .collect(Collectors.groupingBy(Place::piece));
  }

  /** The shortages that nothing planned or held has mended, with what is planned counted. */
  static List<Shortage> without(List<Shortage> shortages, SpanToCheck span) {
    Mended mended = new Mended(span);
    if (mended.places.isEmpty() || shortages.isEmpty()) {
      return shortages;
    }
    List<Shortage> left = new ArrayList<>();
    Set<List<MassId>> gone = new HashSet<>();
    for (Shortage shortage : shortages) {
      Optional<Shortage> standing = mended.findStanding(shortage);
      standing.ifPresent(left::add);
      if (standing.isEmpty()) {
        gone.add(shortage.masses());
      }
    }
    left.addAll(mended.stolesLeft(gone, left));
    return List.copyOf(left);
  }

  /** A chasuble's shortage spoke for the stoles of the same Masses; they speak for themselves. */
  private List<Shortage> stolesLeft(Set<List<MassId>> gone, List<Shortage> left) {
    if (gone.isEmpty()) {
      return List.of();
    }
    Set<MassId> masses = gone.stream().flatMap(List::stream).collect(Collectors.toSet());
    Span all =
        span.toSpanAsHeld(
            span.masses().stream().filter(mass -> masses.contains(mass.id())).toList());
    List<Need> stoles = all.needs().stream().filter(n -> STOLES.contains(n.kind())).toList();
    Span alone = new Span(stoles, all.pieces(), all.journeys(), all.policies(), all.lying());
    return new CheckedShortages(alone)
        .all(ClashCheck.find(alone)).stream()
            .filter(shortage -> shortage.level() == Level.LOCAL && gone.contains(shortage.masses()))
            .flatMap(shortage -> findStanding(shortage).stream())
            .filter(
                shortage -> left.stream().noneMatch(one -> one.needs().equals(shortage.needs())))
            .toList();
  }

  private Optional<Shortage> findStanding(Shortage shortage) {
    if (shortage.level() != Level.LOCAL) {
      return Optional.of(shortage);
    }
    if (!shortage.allClash()) {
      return isServedAsPlanned(shortage) ? Optional.empty() : Optional.of(shortage);
    }
    List<Piece> there =
        Stream.concat(
                shortage.pieces().stream().filter(piece -> !isAwayThroughout(piece, shortage)),
                shortage.elsewhere().stream()
                    .filter(piece -> shortage.needs().stream().anyMatch(n -> isFor(piece, n))))
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    return unserved(shortage.needs(), there, this::serves).isEmpty()
        ? Optional.empty()
        : Optional.of(recounted(shortage, there));
  }

  /**
   * Where one piece may serve several of the Masses, each Mass looks for what is planned for it.
   */
  private boolean isServedAsPlanned(Shortage shortage) {
    List<Piece> all =
        Stream.concat(shortage.pieces().stream(), shortage.elsewhere().stream()).toList();
    return shortage.needs().stream().collect(Collectors.groupingBy(Need::mass)).values().stream()
        .allMatch(
            own ->
                unserved(own, all, (piece, need) -> serves(piece, need) && isFor(piece, need))
                    .isEmpty());
  }

  private Shortage recounted(Shortage shortage, List<Piece> there) {
    if (there.size() >= shortage.needed()) {
      return shortage;
    }
    List<Piece> all =
        Stream.concat(shortage.pieces().stream(), shortage.elsewhere().stream())
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    List<Need> without = unserved(shortage.needs(), there, this::serves);
    Shortage recounted =
        shortage.with(
            new Stock(
                there,
                all.stream().filter(piece -> !there.contains(piece)).toList(),
                shortage.notServing()),
            without.subList(0, shortage.needed() - there.size()));
    return new CheckedShortages(span.toSpanAsHeld(span.masses()))
        .checked(recounted, there::contains);
  }

  /** The needs that are left when each piece is given to one that it may serve. */
  private static List<Need> unserved(
      List<Need> needs, List<Piece> there, BiPredicate<Piece, Need> serves) {
    int[] giver = new int[there.size()];
    Arrays.fill(giver, -1);
    List<Need> left = new ArrayList<>();
    for (int need = 0; need < needs.size(); need++) {
      if (!give(need, needs, there, giver, new boolean[there.size()], serves)) {
        left.add(needs.get(need));
      }
    }
    return left;
  }

  /** An augmenting path: who has the piece may take another, if there is one. */
  private static boolean give(
      int need,
      List<Need> needs,
      List<Piece> there,
      int[] giver,
      boolean[] tried,
      BiPredicate<Piece, Need> serves) {
    for (int piece = 0; piece < there.size(); piece++) {
      if (!tried[piece] && serves.test(there.get(piece), needs.get(need))) {
        tried[piece] = true;
        if (giver[piece] < 0 || give(giver[piece], needs, there, giver, tried, serves)) {
          giver[piece] = need;
          return true;
        }
      }
    }
    return false;
  }

  private boolean serves(Piece piece, Need need) {
    return need.isServedBy(piece.colours())
        && (isFor(piece, need) || (lies(piece, need) && !isElsewhere(piece, need)));
  }

  private boolean lies(Piece piece, Need need) {
    return span.lies(piece, need.window().setOut()).equals(need.church());
  }

  private boolean isAwayThroughout(Piece piece, Shortage shortage) {
    return shortage.needs().stream().allMatch(need -> isElsewhere(piece, need));
  }

  /** Whether something planned or held at another church keeps the piece away from a Mass. */
  private boolean isElsewhere(Piece piece, Need need) {
    return of(piece)
        .anyMatch(
            place ->
                !place.church().equals(need.church())
                    && place.from().isBefore(need.window().cleared())
                    && need.window().setOut().isBefore(place.until()));
  }

  private boolean isFor(Piece piece, Need need) {
    return of(piece)
        .anyMatch(
            place ->
                place.mass().equals(need.mass())
                    && place.church().equals(need.church())
                    && covers(place, need.window()));
  }

  /** From set-out to clearance; or up to the hand-over where the piece stays out for the next. */
  private boolean covers(Place place, Window window) {
    boolean ready =
        !place.from().isAfter(window.setOut())
            || (!place.from().isAfter(window.start()) && isHandedOver(place, place.from(), true));
    boolean stays =
        !place.until().isBefore(window.cleared())
            || (!place.until().isBefore(window.end()) && isHandedOver(place, place.until(), false));
    return ready && stays;
  }

  private boolean isHandedOver(Place place, Instant moment, boolean before) {
    return places.get(place.piece()).stream()
        .filter(other -> other.church().equals(place.church()))
        .anyMatch(other -> (before ? other.until() : other.from()).equals(moment));
  }

  private Stream<Place> of(Piece piece) {
    return places.getOrDefault(piece.code(), List.of()).stream();
  }

  private static Place place(PlannedWear one) {
    return new Place(one.piece(), one.wearer().mass(), one.church(), one.from(), one.until());
  }

  private static Place place(SetAside one) {
    return new Place(
        one.piece(), one.masses().get(0), one.churches().get(0), one.from(), one.until());
  }
}
