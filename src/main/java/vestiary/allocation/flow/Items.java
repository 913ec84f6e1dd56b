package vestiary.allocation.flow;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Contradiction;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/**
 * The pieces of a span as they are carried: whole sets where chasuble and stole, or dalmatic and
 * stole, are at hand together, single pieces else. A set of which one piece is held or away without
 * the other is no whole set.
 */
public final class Items {

  private static final Map<PieceKind, PieceKind> STOLE_OF =
      Map.of(PieceKind.CHASUBLE, PieceKind.STOLE, PieceKind.DALMATIC, PieceKind.DEACON_STOLE);

  private final Situation situation;
  private final Roads roads;
  private final Map<String, List<Hold>> holds;
  private final List<Item> items = new ArrayList<>();
  private final List<Contradiction> contradictions = new ArrayList<>();

  private Items(Situation situation, Roads roads, Set<String> parted) {
    this.situation = situation;
    this.roads = roads;
    this.holds = situation.holds().stream().collect(Collectors.groupingBy(Hold::piece));
    Map<String, List<Piece>> sets = new TreeMap<>();
    situation.span().pieces().stream()
        .sorted(Comparator.comparing(Piece::code))
        .forEach(
            piece ->
                sets.computeIfAbsent(
                        piece.set().isEmpty() ? " " + piece.code() : piece.set(),
                        unknown -> new ArrayList<>())
                    .add(piece));
    sets.forEach((set, pieces) -> pack(new ArrayList<>(pieces), parted.contains(set)));
    items.sort(Comparator.comparing(Item::code));
  }

  /**
   * All items of a span.
   *
   * @param parted codes of sets whose pieces go their own ways
   */
  public static Items of(Situation situation, Roads roads, Set<String> parted) {
    return new Items(situation, roads, parted);
  }

  /** In order of code. */
  public List<Item> all() {
    return List.copyOf(items);
  }

  /** Holds and absences that no plan can keep. */
  public List<Contradiction> contradictions() {
    return List.copyOf(contradictions);
  }

  private void pack(List<Piece> pieces, boolean parted) {
    for (PieceKind outer : List.of(PieceKind.CHASUBLE, PieceKind.DALMATIC)) {
      List<Piece> outers = ofKind(pieces, outer);
      List<Piece> stoles = ofKind(pieces, STOLE_OF.get(outer));
      boolean whole = outers.size() == 1 && stoles.size() == 1 && !parted;
      if (whole && goTogether(outers.get(0), stoles.get(0))) {
        add(List.of(outers.get(0), stoles.get(0)));
        pieces.removeAll(List.of(outers.get(0), stoles.get(0)));
      }
    }
    pieces.forEach(piece -> add(List.of(piece)));
  }

  private static List<Piece> ofKind(List<Piece> pieces, PieceKind kind) {
    return pieces.stream().filter(piece -> piece.kind() == kind).toList();
  }

  private boolean goTogether(Piece one, Piece other) {
    return one.home().equals(other.home())
        && situation.start(one).equals(situation.start(other))
        && one.staysHome() == other.staysHome()
        && one.keptFrom().equals(other.keptFrom())
        && fixed(one).equals(fixed(other));
  }

  private void add(List<Piece> pieces) {
    Piece first = pieces.get(0);
    int start = roads.place(situation.start(first));
    List<Visit> fixed =
        withoutOverlaps(
            fixed(first),
            (before, visit) -> contradictions.add(contradiction(first, before, visit)));
    Item item = new Item(pieces, start, first.staysHome(), fixed);
    items.add(item);
    pieces.forEach(this::tellOfHoldsElsewhere);
    Visit before = Visit.beforeAll(start);
    for (Visit visit : item.fixed()) {
      if (!before.precedes(visit, roads)) {
        contradictions.add(contradiction(first, before, visit));
      }
      before = visit;
    }
  }

  /** What never leaves its church is not where it is held, whatever was said. */
  private void tellOfHoldsElsewhere(Piece piece) {
    holds.getOrDefault(piece.code(), List.of()).stream()
        .filter(hold -> !mayBeThere(piece, hold))
        .map(
            hold ->
                new Contradiction(
                    piece.code(), piece.home(), Instant.MAX, hold.church(), hold.window().setOut()))
        .forEach(contradictions::add);
  }

  private static boolean mayBeThere(Piece piece, Hold hold) {
    return !piece.staysHome() || hold.church().equals(piece.home());
  }

  private Contradiction contradiction(Piece piece, Visit before, Visit visit) {
    return new Contradiction(
        piece.code(),
        roads.church(before.place()),
        Roads.instant(before.cleared()),
        roads.church(visit.place()),
        Roads.instant(visit.setOut()));
  }

  private List<Visit> fixed(Piece piece) {
    Stream<Visit> away = piece.away().stream().map(time -> away(piece, time));
    Stream<Visit> held =
        holds.getOrDefault(piece.code(), List.of()).stream()
            .filter(hold -> mayBeThere(piece, hold))
            .map(hold -> roads.visit(hold.church(), hold.window()));
    return Stream.concat(away, held)
        .distinct()
        .sorted(
            Comparator.comparing(Visit::setOut)
                .thenComparing(Visit::cleared)
                .thenComparing(Visit::place))
        .toList();
  }

  private static boolean isAbsence(Visit visit) {
    return visit.start() == Roads.ALWAYS;
  }

  private Visit away(Piece piece, Away time) {
    // Whoever fetches it takes it from the cupboard, and hangs it up again: no turn for these.
    return new Visit(
        roads.place(piece.home()),
        Roads.floor(time.from()),
        Roads.ALWAYS,
        Roads.NEVER,
        Roads.ceiling(time.until()));
  }

  /**
   * Two that overlap at one church bind as one; at two churches the later begins last.
   *
   * @param onOverlap told of those that cannot both be, as two absences can
   */
  private static List<Visit> withoutOverlaps(
      List<Visit> sorted, BiConsumer<Visit, Visit> onOverlap) {
    List<Visit> kept = new ArrayList<>();
    for (Visit visit : sorted) {
      Visit before = kept.isEmpty() ? null : kept.get(kept.size() - 1);
      if (before != null
          && before.place() == visit.place()
          && visit.setOut() < before.cleared()
          && visit.start() < before.end()) {
        if (!isAbsence(before) || !isAbsence(visit)) {
          onOverlap.accept(before, visit);
        }
        kept.set(
            kept.size() - 1,
            new Visit(
                before.place(),
                before.setOut(),
                Math.min(before.start(), visit.start()),
                Math.max(before.end(), visit.end()),
                Math.max(before.cleared(), visit.cleared())));
      } else {
        kept.add(visit);
      }
    }
    return kept;
  }
}
