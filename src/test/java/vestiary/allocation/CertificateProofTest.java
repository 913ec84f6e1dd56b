package vestiary.allocation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.allocation.Minutes.A;
import static vestiary.allocation.Minutes.need;
import static vestiary.allocation.Minutes.piece;
import static vestiary.calendar.Colour.GREEN;
import static vestiary.calendar.Colour.RED;
import static vestiary.calendar.Colour.ROSE;
import static vestiary.calendar.Colour.VIOLET;
import static vestiary.calendar.Colour.WHITE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.allocation.Certificate.AllClash;
import vestiary.allocation.Certificate.Chain;
import vestiary.allocation.Certificate.Chains;
import vestiary.allocation.Certificate.Choice;
import vestiary.allocation.Certificate.Exhaustion;
import vestiary.allocation.Certificate.ForcedChoices;
import vestiary.allocation.Certificate.Option;
import vestiary.allocation.Certificate.Taken;
import vestiary.allocation.Certificate.Unproven;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/** Each kind of certificate holds as it was found, and is refused for each thing changed in it. */
class CertificateProofTest {

  private final Span chained =
      new Span(
          List.of(need(1, A, 1, 5, RED), need(2, A, 3, 6, WHITE), need(3, A, 5, 6, GREEN)),
          List.of(piece("p", A, WHITE, GREEN), piece("q", A, WHITE, RED)),
          Minutes.nowhere(),
          Minutes.NO_TURN);

  private final Span forced =
      new Span(
          List.of(
              need(1, A, 3, 5, RED),
              need(2, A, 3, 7, WHITE),
              need(3, A, 4, 6, GREEN),
              need(4, A, 5, 8, VIOLET)),
          List.of(
              piece("p", A, GREEN, VIOLET),
              piece("q", A, WHITE, RED, VIOLET),
              piece("r", A, RED, GREEN)),
          Minutes.nowhere(),
          Minutes.NO_TURN);

  private final Span tried =
      new Span(
          List.of(
              need(1, A, 2, 5, WHITE),
              need(2, A, 1, 3, RED),
              need(3, A, 4, 6, GREEN),
              need(4, A, 2, 5, VIOLET),
              need(5, A, 3, 4, ROSE)),
          List.of(
              piece("p", A, WHITE, GREEN, VIOLET, ROSE),
              piece("q", A, WHITE, RED, ROSE),
              piece("r", A, WHITE, RED, GREEN, VIOLET)),
          Minutes.nowhere(),
          Minutes.NO_TURN);

  @Test
  void all_of_them_hold_as_they_were_found() {
    for (Span span : List.of(chained, forced, tried)) {
      assertEquals(List.of(), ShortageProof.findObjections(found(span), span));
    }
  }

  @Test
  void what_shares_a_piece_does_not_all_clash() {
    assertRefused("two of the needs can share a piece", chained, new AllClash());
  }

  @Test
  void as_many_pieces_as_needs_are_no_shortage() {
    Shortage found = found(chained);
    CertificateProof proof =
        new CertificateProof(
            found.needs().subList(0, 2),
            found.pieces(),
            new Reckoning(chained)::serves,
            new Reckoning(chained));

    assertEquals(List.of("there are pieces enough"), proof.findObjections(new AllClash()));
  }

  @Test
  void every_piece_has_its_chain() {
    List<Chain> chains = chains();

    assertRefused(
        "not every piece that serves has its chain", chained, new Chains(chains.subList(0, 1)));
    assertRefused("a piece has two chains", chained, new Chains(twice(chains, 0)));
  }

  @Test
  void no_chain_is_shorter_than_the_longest() {
    Chain none = new Chain(chains().get(0).piece(), List.of());

    assertRefused(
        "a piece can serve more than its chain",
        chained,
        new Chains(List.of(none, chains().get(1))));
  }

  @Test
  void a_chain_is_of_needs_that_its_piece_serves() {
    Chain strange = new Chain(chains().get(0).piece(), chained.needs().subList(0, 1));

    assertRefused(
        "a piece does not serve its chain", chained, new Chains(List.of(strange, chains().get(1))));
  }

  @Test
  void chains_that_add_up_to_the_needs_prove_nothing() {
    List<Piece> pieces = forced.pieces();
    List<Need> needs = forced.needs();
    Chains all =
        new Chains(
            List.of(
                new Chain(pieces.get(0), needs.subList(2, 3)),
                new Chain(pieces.get(1), List.of(needs.get(0), needs.get(3))),
                new Chain(pieces.get(2), needs.subList(0, 1))));

    assertEquals(
        List.of("the chains add up to the needs"),
        ShortageProof.findObjections(found(forced).with(all), forced));
  }

  @Test
  void a_choice_that_leaves_another_is_not_forced() {
    ForcedChoices choices = choices();
    Choice first = choices.choices().get(0);
    Choice second = choices.choices().get(1);

    assertRefused(
        "a choice is not forced",
        forced,
        with(choices, List.of(second, first, choices.choices().get(2))));
    assertRefused(
        "a choice is not forced",
        forced,
        with(
            choices,
            List.of(
                first,
                new Choice(second.need(), second.pieces(), List.of()),
                choices.choices().get(2))));
  }

  @Test
  void a_piece_that_does_not_serve_is_not_chosen() {
    ForcedChoices choices = choices();
    Choice wrong =
        new Choice(choices.choices().get(0).need(), forced.pieces().subList(0, 1), List.of());

    assertRefused("a chosen piece does not serve", forced, with(choices, List.of(wrong)));
  }

  @Test
  void who_took_a_piece_clashes_with_who_looks_for_it() {
    ForcedChoices choices = choices();
    // The first and the last are not at one time, so one piece serves both.
    Need first = forced.needs().get(0);
    Taken wrong = new Taken(choices.gone().get(1).pieces(), List.of(first));

    assertRefused(
        "a piece is left for the last need",
        forced,
        new ForcedChoices(
            choices.choices(), choices.without(), List.of(choices.gone().get(0), wrong)));
  }

  @Test
  void a_stranger_makes_no_choice() {
    ForcedChoices choices = choices();
    List<Choice> more = new ArrayList<>(choices.choices());
    more.add(new Choice(need(9, A, 0, 1, WHITE), forced.pieces().subList(1, 2), List.of()));

    assertRefused("a choice is made for a stranger", forced, with(choices, more));
  }

  @Test
  void every_need_has_all_its_options() {
    List<Option> options = ((Exhaustion) found(tried).certificate()).options();
    List<Option> poorer = new ArrayList<>(options);
    poorer.set(0, new Option(options.get(0).need(), List.of()));

    assertRefused("the options of a need differ", tried, new Exhaustion(poorer));
    assertRefused("not every need has its options", tried, new Exhaustion(options.subList(0, 4)));
  }

  @Test
  void where_one_way_serves_all_nothing_is_exhausted() {
    Shortage found = found(tried);
    List<Piece> pieces = new ArrayList<>(found.pieces());
    pieces.add(piece("s", A, WHITE));
    CertificateProof proof =
        new CertificateProof(
            found.needs(), pieces, new Reckoning(tried)::serves, new Reckoning(tried));

    assertTrue(
        proof
            .findObjections(found.certificate())
            .contains("there is a way to serve all the needs"));
  }

  @Test
  void what_can_be_left_out_is_left_out() {
    List<Option> options = new ArrayList<>(((Exhaustion) found(tried).certificate()).options());
    Need idle = need(6, A, 20, 21, WHITE);
    options.add(new Option(idle, tried.pieces()));
    List<Need> needs = new ArrayList<>(tried.needs());
    needs.add(idle);
    CertificateProof proof =
        new CertificateProof(
            needs, tried.pieces(), new Reckoning(tried)::serves, new Reckoning(tried));

    assertTrue(proof.findObjections(new Exhaustion(options)).contains("a need can be left out"));
  }

  @Test
  void what_is_not_shown_is_not_proven() {
    assertRefused("nothing is shown", tried, new Unproven());
  }

  private List<Chain> chains() {
    return ((Chains) found(chained).certificate()).chains();
  }

  private ForcedChoices choices() {
    return (ForcedChoices) found(forced).certificate();
  }

  private static ForcedChoices with(ForcedChoices choices, List<Choice> others) {
    return new ForcedChoices(others, choices.without(), choices.gone());
  }

  private static List<Chain> twice(List<Chain> chains, int at) {
    List<Chain> more = new ArrayList<>(chains);
    more.add(chains.get(at));
    return more;
  }

  private static Shortage found(Span span) {
    return Minutes.ofCluster(span).get(0);
  }

  private static void assertRefused(String objection, Span span, Certificate tampered) {
    List<String> objections = ShortageProof.findObjections(found(span).with(tampered), span);
    assertTrue(objections.contains(objection), objections.toString());
  }
}
