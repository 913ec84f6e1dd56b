package vestiary.allocation.planner;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/**
 * Tries every assignment of pieces to needs, written anew and by definition: the least of every
 * measure, one after the other. Pieces go straight from where they are to where they are needed.
 */
final class EveryAssignment {

  /** Where a piece is bound; a Mass unless in care. */
  private record Stay(
      ChurchId church, Instant from, Instant until, Optional<Window> mass, Object what) {}

  private record Move(List<Piece> what, ChurchId from, ChurchId to, Instant ready, Instant due) {}

  private final Situation situation;
  private final List<Need> open;
  private final Set<String> held;
  private final Map<Need, Piece> chosen = new HashMap<>();
  private final Map<Need, Integer> depths = new HashMap<>();
  private final List<Provision.Worn> heldProvisions;
  private final boolean partingFreely;
  private long[] best;

  /**
   * @param heldProvisions which needs the held pieces serve, taken as given
   * @param partingFreely whether a set may be taken apart even if it could go together, and it
   *     counts for nothing that it is
   */
  EveryAssignment(Situation situation, List<Provision.Worn> heldProvisions, boolean partingFreely) {
    this.situation = situation;
    this.heldProvisions = heldProvisions;
    this.partingFreely = partingFreely;
    Set<Need> served =
        heldProvisions.stream().map(Provision.Worn::need).collect(Collectors.toSet());
    this.open =
        situation.span().needs().stream().filter(need -> !served.contains(need)).sorted().toList();
    this.held = situation.holds().stream().map(Hold::piece).collect(Collectors.toSet());
  }

  /**
   * Unmet of principals, musts and others; third, second and first steps; sets parted; carriages;
   * minutes; preferences; needs that had another piece in the last plan.
   */
  long[] best() {
    choose(0);
    return best;
  }

  private void choose(int at) {
    if (at == open.size()) {
      measure();
      return;
    }
    Need need = open.get(at);
    int without = -1;
    for (int depth = need.ladder().size(); depth >= 0; depth--) {
      Optional<Step> step =
          depth == 0 ? Optional.empty() : Optional.of(need.ladder().get(depth - 1));
      if (step.filter(Step::isWithout).isPresent()) {
        without = depth;
      }
    }
    depths.put(need, without);
    choose(at + 1);
    for (Piece piece : situation.span().pieces()) {
      int depth = depth(piece, need);
      boolean taken =
          chosen.entrySet().stream()
              .anyMatch(e -> e.getValue() == piece && e.getKey().mass().equals(need.mass()));
      if (depth >= 0 && !taken && !piece.keptFrom().contains(need.mass())) {
        chosen.put(need, piece);
        depths.put(need, depth);
        if (isChain(stays(List.of(piece)), piece)) {
          choose(at + 1);
        }
        chosen.remove(need);
      }
    }
  }

  private int depth(Piece piece, Need need) {
    int length = situation.traits(piece).length();
    boolean fits = !situation.fit(need).must() || situation.fit(need).suits(length);
    if (piece.kind() != need.kind() || !fits) {
      return -1;
    }
    if (need.isServedBy(piece.colours())) {
      return 0;
    }
    for (int depth = 1; depth <= need.ladder().size(); depth++) {
      Step step = need.ladder().get(depth - 1);
      if (need.isServedBy(step, piece.colours())) {
        return depth;
      }
    }
    return -1;
  }

  private void measure() {
    long[] measured = new long[11];
    Map<Object, Map<PieceKind, Long>> steps = new HashMap<>();
    Map<Object, Integer> deepest = new HashMap<>();
    for (Need need : situation.span().needs()) {
      int depth = depths.containsKey(need) ? depths.get(need) : heldDepth(need);
      if (depth < 0) {
        measured[need.role() == Role.PRINCIPAL ? 0 : need.isMust() ? 1 : 2]++;
      } else if (depth > 0) {
        Object key = List.of(need.mass(), need.role(), need.ladder().get(depth - 1), depth);
        steps.computeIfAbsent(key, n -> new HashMap<>()).merge(need.kind(), 1L, Long::sum);
        deepest.merge(key, depth, Math::max);
      }
    }
    steps.forEach(
        (key, kinds) ->
            measured[6 - Math.min(3, deepest.get(key))] +=
                kinds.values().stream().mapToLong(n -> n).max().orElse(0));
    if (isWorse(measured, 6)) {
      return;
    }
    for (List<List<Piece>> items : packings(measured)) {
      if (!isWorse(measured, 7)) {
        List<Move> moves = new ArrayList<>();
        items.forEach(item -> move(item, moves));
        long[] driven = drive(moves);
        measured[7] = driven[0];
        measured[8] = driven[1];
        measured[9] = preferences(moves);
        measured[10] = changes();
        if (best == null || Arrays.compare(measured, best) < 0) {
          best = measured.clone();
        }
      }
    }
  }

  private int heldDepth(Need need) {
    return heldProvisions.stream()
        .filter(one -> one.need().equals(need))
        .mapToInt(Provision::depth)
        .findFirst()
        .orElseThrow();
  }

  private boolean isWorse(long[] measured, int until) {
    return best != null && Arrays.compare(measured, 0, until, best, 0, until) > 0;
  }

  /** Whole sets where both pieces can go together, and how many cannot; or every way to pack. */
  private List<List<List<Piece>>> packings(long[] measured) {
    Map<String, List<Piece>> sets = new TreeMap<>();
    for (Piece piece : situation.span().pieces()) {
      sets.computeIfAbsent(
              piece.set().isEmpty() ? piece.code() : piece.set(), unknown -> new ArrayList<>())
          .add(piece);
    }
    List<List<List<Piece>>> packings = new ArrayList<>(List.of(List.of()));
    for (List<Piece> set : sets.values()) {
      boolean whole =
          set.size() == 2
              && fixed(set.get(0)).equals(fixed(set.get(1)))
              && set.get(0).keptFrom().equals(set.get(1).keptFrom())
              && situation.start(set.get(0)).equals(situation.start(set.get(1)));
      boolean together = whole && isChain(stays(set), set.get(0));
      List<List<Piece>> loose = set.stream().map(List::of).toList();
      List<List<List<Piece>>> longer = new ArrayList<>();
      for (List<List<Piece>> packing : packings) {
        if (together) {
          longer.add(Stream.concat(packing.stream(), Stream.of(set)).toList());
        }
        if (!together || partingFreely) {
          longer.add(Stream.concat(packing.stream(), loose.stream()).toList());
        }
      }
      packings = longer;
      measured[6] += whole && !together && !partingFreely ? 1 : 0;
    }
    return packings;
  }

  private List<Stay> fixed(Piece piece) {
    Stream<Stay> away =
        piece.away().stream()
            .map(time -> new Stay(piece.home(), time.from(), time.until(), Optional.empty(), time));
    Stream<Stay> holds =
        situation.holds().stream()
            .filter(hold -> hold.piece().equals(piece.code()))
            .map(hold -> stay(hold.church(), hold.window(), hold.mass()));
    return Stream.concat(away, holds).sorted(Comparator.comparing(Stay::from)).toList();
  }

  private List<Stay> stays(List<Piece> pieces) {
    Set<Stay> stays = new HashSet<>(fixed(pieces.get(0)));
    chosen.forEach(
        (need, piece) -> {
          if (pieces.contains(piece)) {
            stays.add(stay(need.church(), need.window(), need.mass()));
          }
        });
    return stays.stream()
        .sorted(Comparator.comparing(Stay::from).thenComparing(Stay::until))
        .toList();
  }

  private static Stay stay(ChurchId church, Window window, MassId mass) {
    return new Stay(church, window.setOut(), window.cleared(), Optional.of(window), mass);
  }

  private boolean isChain(List<Stay> stays, Piece piece) {
    long masses =
        chosen.entrySet().stream()
            .filter(e -> e.getValue() == piece)
            .map(Map.Entry::getKey)
            .count();
    if (masses > 0 && stays.size() < masses + fixed(piece).size() && held.contains(piece.code())) {
      // Worn where it is held for another: two at one time.
      return false;
    }
    if (piece.staysHome() && stays.stream().anyMatch(s -> !s.church().equals(piece.home()))) {
      return false;
    }
    for (int at = 1; at < stays.size(); at++) {
      if (!precedes(stays.get(at - 1), stays.get(at))) {
        return false;
      }
    }
    return true;
  }

  private boolean precedes(Stay one, Stay other) {
    boolean turn =
        one.church().equals(other.church())
            && one.mass().isPresent()
            && other.mass().isPresent()
            && !one.mass()
                .get()
                .end()
                .plus(situation.span().policies().turn())
                .isAfter(other.mass().get().start());
    return turn || !one.until().plus(time(one.church(), other.church())).isAfter(other.from());
  }

  private Duration time(ChurchId from, ChurchId to) {
    return situation.span().journeys().find(from, to).orElse(Duration.ofDays(999));
  }

  private void move(List<Piece> item, List<Move> moves) {
    ChurchId at = situation.start(item.get(0));
    Instant ready = Instant.EPOCH.minus(Duration.ofDays(9));
    for (Stay stay : stays(item)) {
      if (!stay.church().equals(at)) {
        moves.add(new Move(item, at, stay.church(), ready, stay.from()));
      }
      at = stay.church();
      ready = stay.until();
    }
  }

  /** Fewest carriages, and their minutes: what no ride covers, stabbed by hours of leaving. */
  private long[] drive(List<Move> moves) {
    Map<List<ChurchId>, List<Move>> byWay =
        moves.stream()
            .filter(move -> situation.rides().stream().noneMatch(ride -> covers(ride, move)))
            .collect(Collectors.groupingBy(move -> List.of(move.from(), move.to())));
    long[] driven = new long[2];
    byWay.forEach(
        (way, own) -> {
          Duration time = time(way.get(0), way.get(1));
          Instant leaves = Instant.MIN;
          for (Move move : own.stream().sorted(Comparator.comparing(Move::due)).toList()) {
            if (leaves.isBefore(move.ready())) {
              leaves = move.due().minus(time);
              driven[0]++;
              driven[1] += time.toMinutes();
            }
          }
        });
    return driven;
  }

  private static boolean covers(Ride ride, Move move) {
    return ride.from().equals(move.from())
        && ride.to().equals(move.to())
        && !ride.departs().isBefore(move.ready())
        && !ride.arrives().isAfter(move.due());
  }

  private Map<Need, Piece> worn() {
    Map<Need, Piece> worn = new HashMap<>(chosen);
    heldProvisions.forEach(one -> worn.put(one.need(), one.piece()));
    return worn;
  }

  private long preferences(List<Move> moves) {
    long sum = 0;
    Map<Need, Piece> worn = worn();
    for (Need need : worn.keySet()) {
      String wanted = situation.occasion(need).grade();
      String grade = situation.traits(worn.get(need)).grade();
      sum += !wanted.isEmpty() && !grade.isEmpty() && !wanted.equals(grade) ? 4 : 0;
      int length = situation.traits(worn.get(need)).length();
      sum += situation.fit(need).suits(length) ? 0 : 6;
    }
    for (Move move : moves) {
      for (Piece piece : move.what()) {
        sum += situation.traits(piece).onAsking() ? 4 : 1;
      }
    }
    return sum + 16 * massesOfSeveralSuits(worn) + 100 * mixed(worn);
  }

  private long changes() {
    Map<Need, Piece> worn = worn();
    long changes = 0;
    for (Provision was : situation.last()) {
      String before = was.findPiece().map(Piece::code).orElse("");
      String now = worn.containsKey(was.need()) ? worn.get(was.need()).code() : "";
      boolean asked = situation.span().needs().contains(was.need());
      boolean lacks = now.isEmpty() && before.isEmpty();
      boolean lawfully = asked && lacks && depths.getOrDefault(was.need(), 0) > 0;
      boolean otherLack = asked && lacks && lawfully != (was instanceof Provision.LeftOut);
      changes += asked && (!before.equals(now) || otherLack) ? 1 : 0;
    }
    return changes;
  }

  /** Chasubles without the stole of their set, where the pool is asked for a stole. */
  private long mixed(Map<Need, Piece> worn) {
    long mixed = 0;
    for (Need outer : worn.keySet()) {
      for (Need stole : situation.span().needs()) {
        if (outer.kind() == PieceKind.CHASUBLE
            && stole.kind() == PieceKind.STOLE
            && stole.wearer().equals(outer.wearer())) {
          String set = worn.get(outer).set();
          boolean whole =
              worn.containsKey(stole) && !set.isEmpty() && worn.get(stole).set().equals(set);
          mixed += whole ? 0 : 1;
        }
      }
    }
    return mixed;
  }

  private long massesOfSeveralSuits(Map<Need, Piece> worn) {
    return situation.span().needs().stream()
        .filter(need -> need.kind() == PieceKind.CHASUBLE)
        .collect(Collectors.groupingBy(Need::mass))
        .values()
        .stream()
        .filter(needs -> needs.size() > 1)
        .filter(this::couldBeAlike)
        .filter(
            needs -> {
              Set<String> suits = new TreeSet<>();
              needs.forEach(n -> suits.add(worn.containsKey(n) ? suit(worn.get(n)) : ""));
              return suits.size() > 1 || suits.contains("");
            })
        .count();
  }

  /** Only where some lawful piece is of a suit is there anything to prefer. */
  private boolean couldBeAlike(List<Need> needs) {
    return situation.span().pieces().stream()
        .filter(piece -> !suit(piece).isEmpty())
        .anyMatch(piece -> needs.stream().anyMatch(need -> depth(piece, need) >= 0));
  }

  private String suit(Piece piece) {
    return situation.traits(piece).suit();
  }
}
