package vestiary.planning;

import java.util.List;
import vestiary.allocation.Certificate;
import vestiary.allocation.Certificate.Chains;
import vestiary.allocation.Certificate.Exhaustion;
import vestiary.allocation.Certificate.ForcedChoices;
import vestiary.allocation.Certificate.Taken;
import vestiary.allocation.Shortage;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * What shows a shortage, as the API writes it; what another kind of proof would say is absent.
 *
 * @param kind all-clash, chains, forced-choices, exhaustion; unproven if the check failed
 * @param sentence the same in words
 * @param needs how many of each Mass are concerned, in order of time
 * @param chains the most that each piece can serve in turn
 * @param atMost what the chains add up to, fewer than the needs
 * @param choices each the only one left, in the order in which they follow
 * @param without the need for which none is left
 * @param options what could serve each need
 */
record ProofBody(
    String kind,
    String sentence,
    List<NeedsOf> needs,
    List<ChainBody> chains,
    Integer atMost,
    List<ChoiceBody> choices,
    ChoiceBody without,
    List<OptionBody> options) {

  record NeedsOf(String mass, int count) {}

  record NeedBody(String mass, String role, int number) {
    static NeedBody from(Need need) {
      return new NeedBody(id(need.mass()), need.role().id(), need.ordinal());
    }
  }

  record ChainBody(String piece, List<NeedBody> needs) {}

  /**
   * @param pieces of which one is taken; empty if none is left
   * @param gone the other pieces that serve the need, with the needs that took them
   */
  record ChoiceBody(NeedBody need, List<String> pieces, List<TakenBody> gone) {}

  record TakenBody(List<String> pieces, List<NeedBody> by) {
    static TakenBody from(Taken taken) {
      return new TakenBody(codes(taken.pieces()), taken.by().stream().map(NeedBody::from).toList());
    }
  }

  record OptionBody(NeedBody need, List<String> pieces) {}

  static ProofBody from(Clash clash, Shortage shortage) {
    String sentence = new ProofWords(shortage, clash.massesById()).sentence();
    List<NeedsOf> needs =
        shortage.masses().stream()
            .map(mass -> new NeedsOf(id(mass), count(mass, shortage)))
            .toList();
    Certificate certificate = shortage.certificate();
    String kind = certificate.kind().id();
    if (certificate instanceof Chains chains) {
      return new ProofBody(
          kind, sentence, needs, chains(chains), chains.atMost(), null, null, null);
    }
    if (certificate instanceof ForcedChoices forced) {
      ChoiceBody without =
          new ChoiceBody(NeedBody.from(forced.without()), List.of(), taken(forced.gone()));
      return new ProofBody(kind, sentence, needs, null, null, choices(forced), without, null);
    }
    if (certificate instanceof Exhaustion exhaustion) {
      return new ProofBody(kind, sentence, needs, null, null, null, null, options(exhaustion));
    }
    return new ProofBody(kind, sentence, needs, null, null, null, null, null);
  }

  private static List<ChainBody> chains(Chains chains) {
    return chains.chains().stream()
        .map(
            chain ->
                new ChainBody(
                    chain.piece().code(), chain.needs().stream().map(NeedBody::from).toList()))
        .toList();
  }

  private static List<ChoiceBody> choices(ForcedChoices forced) {
    return forced.choices().stream()
        .map(
            choice ->
                new ChoiceBody(
                    NeedBody.from(choice.need()), codes(choice.pieces()), taken(choice.gone())))
        .toList();
  }

  private static List<OptionBody> options(Exhaustion exhaustion) {
    return exhaustion.options().stream()
        .map(option -> new OptionBody(NeedBody.from(option.need()), codes(option.pieces())))
        .toList();
  }

  private static List<TakenBody> taken(List<Taken> gone) {
    return gone.stream().map(TakenBody::from).toList();
  }

  private static int count(MassId mass, Shortage shortage) {
    return (int) shortage.needs().stream().filter(need -> need.mass().equals(mass)).count();
  }

  private static List<String> codes(List<Piece> pieces) {
    return pieces.stream().map(Piece::code).toList();
  }

  private static String id(MassId mass) {
    return mass.value().toString();
  }
}
