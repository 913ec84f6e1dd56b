package vestiary.allocation.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/** All changes that touch a shortage or its pieces; nothing else can mend it. */
final class Candidates {

  private static final Map<PieceKind, PieceKind> STOLE_OF =
      Map.of(PieceKind.CHASUBLE, PieceKind.STOLE, PieceKind.DALMATIC, PieceKind.DEACON_STOLE);

  /** Who comes from elsewhere, and may have his own; common practice, no source. */
  private static final Set<Role> VISITORS = Set.of(Role.CONCELEBRANT, Role.DEACON);

  private final Shortage shortage;
  private final Situation situation;
  private final Leeway leeway;
  private final Carries carries;
  private final int missing;

  Candidates(Shortage shortage, Situation situation, Leeway leeway) {
    this.shortage = shortage;
    this.situation = situation;
    this.leeway = leeway;
    this.carries = new Carries(shortage, situation);
    this.missing = shortage.missing();
  }

  /** The stole that comes with a chasuble or dalmatic; the kind itself for all others. */
  static PieceKind mateOf(PieceKind kind) {
    return STOLE_OF.getOrDefault(kind, kind);
  }

  /** All but other hours, and buying what may be borrowed. */
  List<Change> all() {
    return Stream.of(carries.all(), colours(), steps(), releases(), owns(), returns(), loans())
        .flatMap(List::stream)
        .toList();
  }

  /** What a church has of its own, for those who are not short. */
  List<Hold> atHome() {
    return carries.atHome();
  }

  /** Other hours for one Mass, the nearest first. */
  List<Change.MoveStart> starts(MassId mass) {
    return new OtherHours(shortage, situation, leeway).of(mass);
  }

  private List<Change> colours() {
    return leeway.colours().stream()
        .filter(choice -> shortage.masses().contains(choice.mass()))
        .<Change>map(choice -> choice)
        .toList();
  }

  private List<Change> steps() {
    record Like(MassId mass, Role role, Step step) {}
    Map<Like, Set<Wearer>> wearers = new LinkedHashMap<>();
    for (Need need : shortage.needs()) {
      for (Step step : need.ladder()) {
        wearers
            .computeIfAbsent(
                new Like(need.mass(), need.role(), step), unknown -> new LinkedHashSet<>())
            .add(need.wearer());
      }
    }
    List<Change> steps = new ArrayList<>();
    wearers.forEach(
        (like, own) -> {
          int count = Math.min(missing, own.size());
          List<Wearer> last =
              own.stream()
                  .sorted(Comparator.comparing(Wearer::ordinal).reversed())
                  .limit(count)
                  .toList();
          steps.add(new Change.TakeStep(last, shortage.pieceKind(), like.step()));
        });
    return steps;
  }

  private List<Change> releases() {
    Map<String, List<Hold>> together = new TreeMap<>();
    for (Hold hold : situation.holds()) {
      situation.span().pieces().stream()
          .filter(piece -> piece.code().equals(hold.piece()))
          .filter(piece -> couldServe(piece) || isMateOfServing(piece))
          .filter(piece -> !shortage.masses().contains(hold.mass()))
          .filter(piece -> isNear(hold.window().setOut(), hold.window().cleared()))
          .forEach(
              piece ->
                  together
                      .computeIfAbsent(
                          (piece.set().isEmpty() ? piece.code() : piece.set()) + hold.mass(),
                          unknown -> new ArrayList<>())
                      .add(hold));
    }
    return together.values().stream().<Change>map(Change.Release::new).toList();
  }

  private boolean isMateOfServing(Piece piece) {
    return !piece.set().isEmpty()
        && situation.span().pieces().stream()
            .anyMatch(other -> other.set().equals(piece.set()) && couldServe(other));
  }

  private boolean couldServe(Piece piece) {
    return shortage.needs().stream()
        .anyMatch(need -> piece.kind() == need.kind() && need.isServedBy(piece.colours()));
  }

  private boolean isNear(Instant from, Instant until) {
    Duration day = Duration.ofHours(24);
    return from.isBefore(shortage.to().plus(day)) && until.isAfter(shortage.from().minus(day));
  }

  private List<Change> owns() {
    return shortage.unserved().stream()
        .filter(need -> VISITORS.contains(need.role()))
        .collect(Collectors.groupingBy(Need::mass, TreeMap::new, Collectors.toList()))
        .entrySet()
        .stream()
        .<Change>map(
            e -> new Change.BringOwn(e.getKey(), e.getValue().get(0).role(), e.getValue().size()))
        .toList();
  }

  private List<Change> returns() {
    List<Change> returns = new ArrayList<>();
    shortage
        .notServing()
        .forEach(
            not -> {
              for (Away away : not.away()) {
                List<Piece> back =
                    carries.withMates(not.piece()).stream()
                        .filter(piece -> piece.away().contains(away))
                        .toList();
                returns.add(new Change.BringBack(back, away));
              }
            });
    return returns;
  }

  private List<Change> loans() {
    List<Piece> pieces = new ArrayList<>();
    for (int at = 0; at < missing; at++) {
      Need need = shortage.unserved().get(at);
      String set = "new-" + (at + 1);
      pieces.add(piece(set + "-1", need.kind(), need, set));
      if (STOLE_OF.containsKey(need.kind())) {
        pieces.add(piece(set + "-2", STOLE_OF.get(need.kind()), need, set));
      }
    }
    return List.of(new Change.Borrow(pieces));
  }

  private static Piece piece(String code, PieceKind kind, Need need, String set) {
    return new Piece(code, kind, List.of(need.colour()), need.church(), false, set, List.of());
  }
}
