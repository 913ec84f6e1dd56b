package vestiary.allocation;

import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import vestiary.allocation.Certificate.Chain;
import vestiary.allocation.Certificate.Choice;
import vestiary.allocation.Certificate.Option;
import vestiary.allocation.Certificate.Taken;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Shows in the way that is easiest to follow that some needs cannot all be served. */
final class Certifier {

  private final IntFunction<Need> needs;
  private final IntFunction<Piece> pieces;
  private final Succession succession;
  private final Eligibility eligibility;

  Certifier(
      IntFunction<Need> needs,
      IntFunction<Piece> pieces,
      Succession succession,
      Eligibility eligibility) {
    this.needs = needs;
    this.pieces = pieces;
    this.succession = succession;
    this.eligibility = eligibility;
  }

  /**
   * The first kind of certificate that will do.
   *
   * @param set needs that a search has shown not to be servable, in ascending order
   */
  Certificate certify(List<Integer> set) {
    if (allClash(set) && serving(set).cardinality() < set.size()) {
      return new Certificate.AllClash();
    }
    Certificate.Chains chains = chains(set);
    if (chains.atMost() < set.size()) {
      return chains;
    }
    List<Forcing.Link> links = new Forcing(set, succession, eligibility).find();
    return links.isEmpty() ? exhaustion(set) : forcedChoices(links);
  }

  /** How many pieces serve any of the needs. */
  int available(List<Integer> set) {
    return serving(set).cardinality();
  }

  private boolean allClash(List<Integer> set) {
    return IntStream.range(0, set.size())
        .allMatch(
            at ->
                set.subList(0, at).stream()
                    .allMatch(other -> succession.clash(set.get(at), other)));
  }

  private BitSet serving(List<Integer> set) {
    return set.stream()
        .flatMapToInt(need -> IntStream.of(eligibility.piecesOf(need)))
        .collect(BitSet::new, BitSet::set, BitSet::or);
  }

  private Certificate.Chains chains(List<Integer> set) {
    return new Certificate.Chains(
        serving(set).stream().mapToObj(piece -> chain(piece, set)).toList());
  }

  private Chain chain(int piece, List<Integer> set) {
    List<Integer> own = set.stream().filter(need -> eligibility.of(need).get(piece)).toList();
    return new Chain(
        pieces.apply(piece), LongestChain.of(own, succession).stream().map(needs::apply).toList());
  }

  private Certificate forcedChoices(List<Forcing.Link> links) {
    Forcing.Link end = links.get(links.size() - 1);
    return new Certificate.ForcedChoices(
        links.subList(0, links.size() - 1).stream().map(this::choice).toList(),
        needs.apply(end.need()),
        taken(end.takers()));
  }

  private Choice choice(Forcing.Link link) {
    return new Choice(needs.apply(link.need()), pieces(link.pieces()), taken(link.takers()));
  }

  private List<Taken> taken(Map<BitSet, List<Integer>> takers) {
    return takers.entrySet().stream()
        .sorted(Comparator.comparing(taker -> taker.getKey().nextSetBit(0)))
        .map(
            taker ->
                new Taken(
                    pieces(taker.getKey()), taker.getValue().stream().map(needs::apply).toList()))
        .toList();
  }

  private List<Piece> pieces(BitSet places) {
    return places.stream().mapToObj(pieces).toList();
  }

  private Certificate exhaustion(List<Integer> set) {
    return new Certificate.Exhaustion(
        set.stream()
            .map(
                need ->
                    new Option(
                        needs.apply(need),
                        IntStream.of(eligibility.piecesOf(need)).mapToObj(pieces).toList()))
            .toList());
  }
}
