package vestiary.allocation.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
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

  private static final int ROUND_MINUTES = 5;

  /** Who comes from elsewhere, and may have his own; common practice, no source. */
  private static final Set<Role> VISITORS = Set.of(Role.CONCELEBRANT, Role.DEACON);

  private final Shortage shortage;
  private final Situation situation;
  private final Leeway leeway;
  private final int missing;

  Candidates(Shortage shortage, Situation situation, Leeway leeway) {
    this.shortage = shortage;
    this.situation = situation;
    this.leeway = leeway;
    this.missing = shortage.missing();
  }

  /** The stole that comes with a chasuble or dalmatic; the kind itself for all others. */
  static PieceKind mateOf(PieceKind kind) {
    return STOLE_OF.getOrDefault(kind, kind);
  }

  /** All but other hours, and buying what may be borrowed. */
  List<Change> all() {
    return Stream.of(carries(), colours(), steps(), releases(), owns(), returns(), loans())
        .flatMap(List::stream)
        .toList();
  }

  /**
   * From one church at a time, as many as are missing, with the stoles of their sets; and where a
   * church has a suit for all of one Mass, the whole of it, so that all match.
   */
  private List<Change> carries() {
    Map<ChurchId, List<Piece>> byHome =
        shortage.elsewhere().stream()
            .sorted(
                Comparator.comparing((Piece piece) -> situation.traits(piece).onAsking())
                    .thenComparing(Piece::code))
            .collect(Collectors.groupingBy(Piece::home, TreeMap::new, Collectors.toList()));
    List<Change> carries = new ArrayList<>();
    byHome.forEach(
        (home, pieces) -> {
          if (pieces.size() >= missing) {
            carries.add(carry(home, shortage.unserved(), pieces.subList(0, missing)));
          }
          suit(pieces).ifPresent(suit -> carries.add(carry(home, shortage.needs(), suit)));
        });
    return carries;
  }

  private Optional<List<Piece>> suit(List<Piece> pieces) {
    int needed = shortage.needed();
    if (shortage.masses().size() > 1 || needed == missing) {
      return Optional.empty();
    }
    return pieces.stream()
        .filter(piece -> !situation.traits(piece).suit().isEmpty())
        .collect(
            Collectors.groupingBy(
                piece -> situation.traits(piece).suit(), TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .filter(suit -> suit.size() >= needed)
        .map(suit -> suit.subList(0, needed))
        .findFirst();
  }

  private Change carry(ChurchId home, List<Need> needs, List<Piece> pieces) {
    List<Hold> holds = new ArrayList<>();
    List<Piece> all = new ArrayList<>();
    for (int at = 0; at < pieces.size(); at++) {
      Need need = needs.get(at);
      for (Piece piece : withMates(pieces.get(at))) {
        all.add(piece);
        holds.add(new Hold(piece.code(), need.mass(), need.church(), need.window()));
      }
    }
    return new Change.Carry(all, home, holds);
  }

  /**
   * What a church has of its own, for those who are not short: a change by which nothing need be
   * carried is not an occasion to carry something finer.
   */
  List<Hold> atHome() {
    List<Hold> holds = new ArrayList<>();
    if (shortage.level() == Level.CLUSTER || shortage.masses().size() > 1) {
      return holds;
    }
    List<Need> served = new ArrayList<>(shortage.needs());
    served.removeAll(shortage.unserved());
    for (int at = 0; at < Math.min(served.size(), shortage.available()); at++) {
      Need need = served.get(at);
      for (Piece piece : withMates(shortage.pieces().get(at))) {
        boolean held =
            situation.holds().stream().anyMatch(hold -> hold.piece().equals(piece.code()));
        if (!held && piece.home().equals(need.church())) {
          holds.add(new Hold(piece.code(), need.mass(), need.church(), need.window()));
        }
      }
    }
    return holds;
  }

  private List<Piece> withMates(Piece piece) {
    return Stream.concat(
            Stream.of(piece),
            situation.span().pieces().stream()
                .filter(other -> other.kind() == STOLE_OF.get(piece.kind()))
                .filter(other -> !piece.set().isEmpty() && other.set().equals(piece.set())))
        .toList();
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
                    withMates(not.piece()).stream()
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

  /**
   * Hours for one Mass, the nearest first. Only at those minutes does it become possible to carry a
   * piece from one Mass to another; they are rounded to the next five minutes.
   */
  List<Change.MoveStart> starts(MassId mass) {
    Need need =
        shortage.needs().stream().filter(n -> n.mass().equals(mass)).findFirst().orElseThrow();
    Set<Long> shifts =
        new TreeSet<>(
            Comparator.comparing((Long minutes) -> Math.abs(minutes))
                .thenComparing(Comparator.reverseOrder()));
    shortage.needs().stream()
        .filter(other -> !other.mass().equals(mass))
        .forEach(other -> shifts.addAll(shifts(need, other)));
    return shifts.stream()
        .filter(minutes -> minutes != 0)
        .map(minutes -> new Change.MoveStart(mass, Duration.ofMinutes(minutes)))
        .filter(move -> leeway.allows(move, need.window()))
        .toList();
  }

  private List<Long> shifts(Need need, Need other) {
    Duration turn = situation.span().policies().turn();
    List<Long> shifts = new ArrayList<>();
    if (need.church().equals(other.church())) {
      shifts.add(later(need.window().start(), other.window().end().plus(turn)));
      shifts.add(earlier(need.window().end().plus(turn), other.window().start()));
      return shifts;
    }
    situation
        .span()
        .journeys()
        .find(other.church(), need.church())
        .ifPresent(
            time -> shifts.add(later(need.window().setOut(), other.window().cleared().plus(time))));
    situation
        .span()
        .journeys()
        .find(need.church(), other.church())
        .ifPresent(
            time ->
                shifts.add(earlier(need.window().cleared().plus(time), other.window().setOut())));
    return shifts;
  }

  /** Minutes by which the one moment must come later so as not to be before the other. */
  private static long later(Instant one, Instant other) {
    long minutes = Math.max(0, ceiling(Duration.between(one, other)));
    return (minutes + ROUND_MINUTES - 1) / ROUND_MINUTES * ROUND_MINUTES;
  }

  /** Minutes, 0 or less, by which the one must come earlier so as not to be after the other. */
  private static long earlier(Instant one, Instant other) {
    return -later(other, one);
  }

  private static long ceiling(Duration time) {
    return (time.toSeconds() + 59) / 60;
  }
}
