package vestiary.allocation.plan;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.Wearer;

/**
 * What provisions and movements come to, counted from nothing else: the one count for every plan,
 * however it was made.
 */
public final class Tally {

  private record Stepping(MassId mass, Role role, Step step, int depth) {}

  private record Wanted(Wearer wearer, PieceKind kind) {}

  private Tally() {}

  /** The score of a plan. */
  public static Score of(
      Collection<? extends Provision> provisions,
      Collection<Movement> movements,
      Situation situation) {
    List<Movement> carriages = movements.stream().filter(Movement::isCarriage).toList();
    return new Score(
        unmet(provisions),
        steps(provisions),
        carriages.size(),
        carriages.stream().mapToLong(one -> minutes(one, situation)).sum(),
        preferences(provisions, situation) + ofJourneys(movements, situation),
        changes(provisions, situation));
  }

  /** Unmet needs of principal celebrants, others that must be met, all others. */
  public static List<Long> unmet(Collection<? extends Provision> provisions) {
    long[] unmet = new long[3];
    provisions.stream()
        .filter(Provision.Unmet.class::isInstance)
        .map(Provision::need)
        .forEach(n -> unmet[n.role() == Role.PRINCIPAL ? 0 : n.isMust() ? 1 : 2]++);
    return List.of(unmet[0], unmet[1], unmet[2]);
  }

  /**
   * Persons with a third substitute or a deeper one, a second, a first. A person whose chasuble and
   * stole both step down the same way counts once.
   */
  public static List<Long> steps(Collection<? extends Provision> provisions) {
    Map<Stepping, Map<PieceKind, Long>> persons = new HashMap<>();
    for (Provision one : provisions) {
      one.findStep()
          .ifPresent(
              step -> {
                Stepping key =
                    new Stepping(one.need().mass(), one.need().role(), step, one.depth());
                persons
                    .computeIfAbsent(key, unknown -> new HashMap<>())
                    .merge(one.need().kind(), 1L, Long::sum);
              });
    }
    long[] steps = new long[3];
    persons.forEach(
        (key, kinds) ->
            steps[3 - Math.min(3, key.depth())] +=
                kinds.values().stream().mapToLong(Long::longValue).max().orElse(0));
    return List.of(steps[0], steps[1], steps[2]);
  }

  /** How little people like what is worn, journeys left aside. */
  private static long preferences(Collection<? extends Provision> provisions, Situation situation) {
    return ofPersons(provisions, situation)
        + Displeasure.SEVERAL_SUITS.weight() * severalSuits(provisions, situation);
  }

  /** How little people like what each wearer has, journeys and suits left aside. */
  public static long ofPersons(Collection<? extends Provision> provisions, Situation situation) {
    long pieces =
        provisions.stream()
            .filter(one -> one.findPiece().isPresent())
            .mapToLong(one -> displeasure(one, situation))
            .sum();
    return pieces + Displeasure.MIXED.weight() * mixed(provisions);
  }

  /** Needs that the last plan served otherwise; what it did not know is no change. */
  public static long changes(Collection<? extends Provision> provisions, Situation situation) {
    if (situation.last().isEmpty()) {
      return 0;
    }
    Map<Need, Provision> last = new HashMap<>();
    situation.last().forEach(was -> last.put(was.need(), was));
    return provisions.stream()
        .filter(one -> last.containsKey(one.need()))
        .filter(one -> !isSame(one, last.get(one.need())))
        .count();
  }

  /** Whether both say the same: the same piece by its code, or the same kind of lack. */
  private static boolean isSame(Provision one, Provision other) {
    Optional<String> code = one.findPiece().map(Piece::code);
    return code.equals(other.findPiece().map(Piece::code))
        && (code.isPresent() || one.getClass().equals(other.getClass()));
  }

  /**
   * Whether those who wear chasubles at one Mass could be alike in any degree: two or more, and a
   * piece of some suit that may be worn by one of them.
   *
   * @param chasubles all needs of chasubles at the Mass
   */
  public static boolean asksForOneSuit(Collection<Need> chasubles, Situation situation) {
    return chasubles.size() > 1
        && situation.span().pieces().stream()
            .filter(piece -> piece.kind() == PieceKind.CHASUBLE)
            .filter(piece -> !situation.traits(piece).suit().isEmpty())
            .anyMatch(piece -> chasubles.stream().anyMatch(n -> mayWear(n, piece, situation)));
  }

  private static boolean mayWear(Need need, Piece piece, Situation situation) {
    Fit fit = situation.fit(need);
    return need.isLawfullyServedBy(piece.colours())
        && (!fit.must() || fit.suits(situation.traits(piece).length()));
  }

  /** One score and another, number by number. */
  public static Score sum(Score one, Score other) {
    return new Score(
        sum(one.unmet(), other.unmet()),
        sum(one.steps(), other.steps()),
        one.carriages() + other.carriages(),
        one.minutes() + other.minutes(),
        one.preferences() + other.preferences(),
        one.changes() + other.changes());
  }

  private static List<Long> sum(List<Long> some, List<Long> others) {
    return IntStream.range(0, some.size()).mapToObj(at -> some.get(at) + others.get(at)).toList();
  }

  private static long minutes(Movement one, Situation situation) {
    return situation
        .span()
        .journeys()
        .find(one.from(), one.to())
        .map(time -> (time.toSeconds() + 59) / 60)
        .orElse(0L);
  }

  private static int displeasure(Provision one, Situation situation) {
    return Displeasure.at(
        situation.occasion(one.need()),
        situation.fit(one.need()),
        situation.traits(one.findPiece().orElseThrow()));
  }

  private static long ofJourneys(Collection<Movement> movements, Situation situation) {
    return movements.stream()
        .flatMap(one -> one.pieces().stream())
        .mapToLong(piece -> Displeasure.ofJourney(situation.traits(piece)))
        .sum();
  }

  private static long mixed(Collection<? extends Provision> provisions) {
    Map<Wanted, Provision> stoles = new HashMap<>();
    provisions.stream()
        .filter(one -> WholeSets.findOuter(one.need().kind()).isPresent())
        .forEach(one -> stoles.put(new Wanted(one.need().wearer(), one.need().kind()), one));
    return provisions.stream()
        .filter(one -> one.findPiece().isPresent())
        .filter(
            one ->
                WholeSets.findStole(one.need().kind())
                    .map(stole -> stoles.get(new Wanted(one.need().wearer(), stole)))
                    .filter(stole -> !isOneSet(one, stole))
                    .isPresent())
        .count();
  }

  private static boolean isOneSet(Provision outer, Provision stole) {
    return stole
        .findPiece()
        .filter(piece -> WholeSets.areOne(outer.findPiece().orElseThrow(), piece))
        .isPresent();
  }

  private static long severalSuits(
      Collection<? extends Provision> provisions, Situation situation) {
    Map<MassId, List<Provision>> chasubles =
        provisions.stream()
            .filter(one -> one.need().kind() == PieceKind.CHASUBLE)
            .collect(
                Collectors.groupingBy(one -> one.need().mass(), TreeMap::new, Collectors.toList()));
    return chasubles.values().stream()
        .filter(own -> asksForOneSuit(own.stream().map(Provision::need).toList(), situation))
        .filter(own -> !areOfOneSuit(own, situation))
        .count();
  }

  private static boolean areOfOneSuit(List<Provision> chasubles, Situation situation) {
    Set<String> suits =
        chasubles.stream()
            .map(one -> one.findPiece().map(piece -> situation.traits(piece).suit()).orElse(""))
            .collect(Collectors.toSet());
    return suits.size() == 1 && !suits.contains("");
  }
}
