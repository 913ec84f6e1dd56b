package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;

/** The findings of one kind of piece, at both levels. */
final class KindCheck {

  private record Label(Colour colour, ChurchId church) {}

  private final Span span;
  private final List<Need> needs;
  private final Pool pool;
  private final Succession succession;
  private final List<ChurchId> churches;
  private final List<BitSet> anywhere;
  private final List<BitSet> atHome;

  /**
   * @param needs of that kind, in canonical order
   */
  KindCheck(PieceKind kind, List<Need> needs, Span span) {
    this.span = span;
    this.needs = needs;
    this.pool = new Pool(span, kind);
    this.succession = new Succession(needs, span.journeys(), span.policies().turn());
    this.churches = needs.stream().map(Need::church).distinct().sorted().toList();
    this.anywhere = needs.stream().map(pool::serving).toList();
    this.atHome =
        IntStream.range(0, needs.size())
            .mapToObj(need -> pool.atHome(anywhere.get(need), needs.get(need)))
            .toList();
  }

  List<Shortage> find() {
    List<List<Integer>> sets = search(all(), anywhere, this::region);
    List<List<Integer>> exhausted = sets.isEmpty() ? List.of() : exhaustedSets();
    List<Shortage> cluster =
        withExhausted(sets, exhausted).stream()
            .map(set -> shortage(Level.CLUSTER, set, exhausted))
            .toList();
    Stream<Shortage> local =
        search(all(), atHome, Need::church).stream()
            .map(set -> shortage(Level.LOCAL, set, List.of()));
    return Stream.concat(cluster.stream(), local).toList();
  }

  private List<Integer> all() {
    return IntStream.range(0, needs.size()).boxed().toList();
  }

  private List<List<Integer>> search(
      List<Integer> asked, List<BitSet> serving, Function<Need, ChurchId> place) {
    Function<Integer, Object> label =
        need -> new Label(needs.get(need).colour(), place.apply(needs.get(need)));
    Eligibility eligibility = new Eligibility(serving, pool.size(), label);
    return ClashingSets.find(asked, succession, eligibility);
  }

  /** The first church to and from which this one has journeys, the same for all of a region. */
  private ChurchId region(Need need) {
    return churches.stream()
        .filter(church -> isWithinReach(church, need.church()))
        .findFirst()
        .orElseThrow();
  }

  private boolean isWithinReach(ChurchId one, ChurchId other) {
    return span.journeys().seconds(one, other) != Journeys.NO_WAY
        && span.journeys().seconds(other, one) != Journeys.NO_WAY;
  }

  private List<List<Integer>> exhaustedSets() {
    List<BitSet> lawful = needs.stream().map(pool::servingLawfully).toList();
    List<Integer> musts = all().stream().filter(need -> needs.get(need).isMust()).toList();
    return search(musts, lawful, this::region);
  }

  /** Adds exhausted sets that lie in no other, and drops the sets that lie in one of these. */
  private static List<List<Integer>> withExhausted(
      List<List<Integer>> sets, List<List<Integer>> exhausted) {
    List<List<Integer>> added =
        exhausted.stream()
            .filter(own -> sets.stream().noneMatch(set -> set.containsAll(own)))
            .toList();
    List<List<Integer>> all = new ArrayList<>(added);
    sets.stream()
        .filter(set -> added.stream().noneMatch(own -> own.containsAll(set)))
        .forEach(all::add);
    return all;
  }

  private Shortage shortage(Level level, List<Integer> set, List<List<Integer>> exhausted) {
    List<Need> named = set.stream().map(needs::get).toList();
    List<BitSet> serving = level == Level.LOCAL ? atHome : anywhere;
    List<LateArrival> late = LateArrivals.first(named, span.journeys());
    List<Need> musts =
        exhausted.stream()
            .filter(set::containsAll)
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .map(needs::get)
            .toList();
    return new Shortage(
        level,
        late.isEmpty() ? ShortageKind.SHORTAGE : ShortageKind.UNREACHABLE,
        named,
        pool.stock(named, union(set, serving), union(set, anywhere)),
        Unserved.of(set, needs, serving, atHome),
        musts,
        late);
  }

  private static BitSet union(List<Integer> set, List<BitSet> serving) {
    return set.stream().map(serving::get).collect(BitSet::new, BitSet::or, BitSet::or);
  }
}
