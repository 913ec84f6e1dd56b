package vestiary.allocation;

import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;

/** The findings of one kind of piece, at both levels. */
final class KindCheck {

  private record Label(Colour colour, ChurchId church) {}

  /**
   * @param exhausted needs of the set, or of the one it stands for, that nothing lawful serves
   */
  private record Finding(ShortSet set, List<Integer> exhausted) {}

  private final Span span;
  private final List<Need> needs;
  private final Pool pool;
  private final Succession succession;
  private final List<ChurchId> churches;
  private final List<BitSet> anywhere;
  private final List<BitSet> there;

  /**
   * @param pool the pieces of one kind
   * @param needs of that kind, in canonical order, which no night parts
   */
  KindCheck(Pool pool, List<Need> needs, Span span) {
    this.span = span;
    this.needs = needs;
    this.pool = pool;
    this.succession = new Succession(needs, span.journeys(), span.policies().turn());
    this.churches = needs.stream().map(Need::church).distinct().sorted().toList();
    this.anywhere = needs.stream().map(pool::serving).toList();
    this.there =
        IntStream.range(0, needs.size())
            .mapToObj(need -> pool.there(anywhere.get(need), needs.get(need)))
            .toList();
  }

  List<Shortage> find() {
    ShortSets anywhereSets = sets(anywhere, this::region);
    List<ShortSet> sets = anywhereSets.find(all());
    List<Finding> cluster = sets.isEmpty() ? List.of() : withExhausted(sets, anywhereSets);
    Stream<Finding> local =
        sets(there, Need::church).find(all()).stream().map(set -> new Finding(set, List.of()));
    return Stream.concat(
            cluster.stream().map(finding -> shortage(Level.CLUSTER, finding)),
            local.map(finding -> shortage(Level.LOCAL, finding)))
        .toList();
  }

  private List<Integer> all() {
    return IntStream.range(0, needs.size()).boxed().toList();
  }

  private ShortSets sets(List<BitSet> serving, Function<Need, ChurchId> place) {
    Function<Integer, Object> label =
        need -> new Label(needs.get(need).colour(), place.apply(needs.get(need)));
    Eligibility eligibility = new Eligibility(serving, pool.size(), label);
    return new ShortSets(
        succession,
        eligibility,
        new Certifier(needs::get, pool::piece, succession, eligibility),
        set -> Unserved.of(set, needs, serving, there));
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

  private List<ShortSet> exhaustedSets() {
    List<BitSet> lawful = needs.stream().map(pool::servingLawfully).toList();
    List<Integer> musts = all().stream().filter(need -> needs.get(need).isMust()).toList();
    return sets(lawful, this::region).find(musts);
  }

  /**
   * Tells which sets are exhausted, adds exhausted ones that lie in no other, and drops the sets
   * that lie in one of these.
   */
  private List<Finding> withExhausted(List<ShortSet> sets, ShortSets anywhereSets) {
    List<List<Integer>> exhausted = exhaustedSets().stream().map(ShortSet::needs).toList();
    List<List<Integer>> added =
        exhausted.stream()
            .filter(own -> sets.stream().noneMatch(set -> set.needs().containsAll(own)))
            .toList();
    Stream<Finding> own =
        added.stream()
            .flatMap(
                needs ->
                    anywhereSets.findWhole(needs).stream()
                        .map(set -> finding(set, needs, exhausted)));
    Stream<Finding> others =
        sets.stream()
            .filter(set -> added.stream().noneMatch(one -> one.containsAll(set.needs())))
            .map(set -> finding(set, set.needs(), exhausted));
    return Stream.concat(own, others).toList();
  }

  private static Finding finding(ShortSet set, List<Integer> needs, List<List<Integer>> exhausted) {
    return new Finding(
        set,
        exhausted.stream()
            .filter(needs::containsAll)
            .flatMap(List::stream)
            .distinct()
            .sorted()
            .toList());
  }

  private Shortage shortage(Level level, Finding finding) {
    ShortSet set = finding.set();
    List<Need> named = set.needs().stream().map(needs::get).toList();
    List<BitSet> serving = level == Level.LOCAL ? there : anywhere;
    List<LateArrival> late =
        set.allClash() ? LateArrivals.first(named, span.journeys()) : List.of();
    return new Shortage(
        level,
        late.isEmpty() ? ShortageKind.SHORTAGE : ShortageKind.UNREACHABLE,
        named,
        pool.stock(named, union(set, serving), union(set, anywhere)),
        Unserved.of(set, needs, serving, there).stream().map(needs::get).toList(),
        finding.exhausted().stream().map(needs::get).toList(),
        late,
        set.certificate());
  }

  private static BitSet union(ShortSet set, List<BitSet> serving) {
    return set.needs().stream().map(serving::get).collect(BitSet::new, BitSet::or, BitSet::or);
  }
}
