package vestiary.reservation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Plan;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.planner.Effort;
import vestiary.allocation.planner.Planner;
import vestiary.calendar.Colour;
import vestiary.plan.SituationOf;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassColour;
import vestiary.vesting.Need;
import vestiary.vesting.Norm;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/**
 * Which of the free sets to take when only their number is said: those that the planner would give
 * to so many who vest alike, with the fewest journeys first and then what goes together, the grade
 * of the day and the size. What is planned for other Masses is left to them as far as possible.
 */
final class ProposeSets {

  /** The first plan is proven at once where nothing but one Mass is asked about. */
  private static final Effort EFFORT = Effort.of(1);

  private static final Norm NORM = new Norm(true, List.of(), "GIRM 209");

  private final Offers offers;
  private final Wish wish;
  private final Situation base;

  ProposeSets(Offers offers, Wish wish) {
    this.offers = offers;
    this.wish = wish;
    this.base = SituationOf.span(offers.span());
  }

  /**
   * What is wished for.
   *
   * @param number of sets, 1 or more
   * @param kind of the piece that a set is named after
   * @param matching whether all are to be of one suit, where one has enough
   */
  record Wish(int number, PieceKind kind, Colour colour, boolean matching) {}

  /** In order of their codes; fewer than wished for if there are no more. */
  List<Offer> propose() {
    List<Offer> fit = offers.all().stream().filter(Offer::isFree).filter(this::fits).toList();
    List<Offer> calm = fit.stream().filter(offer -> offer.losing().isEmpty()).toList();
    List<Offer> chosen =
        findOfOneSuit(calm).or(() -> findOfOneSuit(fit)).orElseGet(() -> inTwoSteps(calm, fit));
    return chosen.stream().sorted(Comparator.comparing(Offer::code)).toList();
  }

  private boolean fits(Offer offer) {
    DatedMass mass = offers.mass();
    MassColour asked = mass.toVestedMass().colour();
    return offer.thing().main().kind() == wish.kind()
        && need(1, asked).isServedBy(offer.thing().main().colours());
  }

  private List<Offer> inTwoSteps(List<Offer> calm, List<Offer> fit) {
    List<Offer> chosen = new ArrayList<>(chosen(planned(calm, wish.number()), calm));
    if (chosen.size() < wish.number()) {
      List<Offer> others = fit.stream().filter(offer -> !calm.contains(offer)).toList();
      chosen.addAll(chosen(planned(others, wish.number() - chosen.size()), others));
    }
    return chosen;
  }

  private Optional<List<Offer>> findOfOneSuit(List<Offer> from) {
    if (!wish.matching()) {
      return Optional.empty();
    }
    return from.stream()
        .filter(offer -> !offer.thing().main().suit().isEmpty())
        .collect(Collectors.groupingBy(offer -> offer.thing().main().suit()))
        .values()
        .stream()
        .filter(suit -> suit.size() >= wish.number())
        .map(suit -> Map.entry(planned(suit, wish.number()), suit))
        .min(
            Comparator.comparing((Map.Entry<Plan, List<Offer>> one) -> one.getKey().score())
                .thenComparing(one -> one.getValue().get(0).thing().main().suit()))
        .map(one -> chosen(one.getKey(), one.getValue()));
  }

  private Plan planned(List<Offer> from, int number) {
    SpanToCheck span = offers.span();
    MassColour asked = offers.mass().toVestedMass().colour();
    List<Need> needs =
        IntStream.rangeClosed(1, number).mapToObj(ordinal -> need(ordinal, asked)).toList();
    Span question =
        new Span(
            needs,
            from.stream().map(offer -> offer.thing().main().toPiece()).toList(),
            span.journeys(),
            span.cluster().policies().vesting());
    return Planner.onThisMachine()
        .plan(
            base.with(question)
                .withHolds(List.of())
                .withLast(List.of())
                .withStarts(
                    from.stream()
                        .flatMap(Offer::main)
                        .collect(
                            Collectors.toMap(Availability.Free::piece, Availability.Free::lies))),
            EFFORT);
  }

  private Need need(int ordinal, MassColour asked) {
    return new Need(
        new Wearer(offers.mass().id(), Role.CONCELEBRANT, ordinal),
        offers.mass().church().id(),
        offers.window(),
        wish.kind(),
        wish.colour(),
        asked.festive(),
        NORM);
  }

  private static List<Offer> chosen(Plan plan, List<Offer> from) {
    Map<String, Offer> byPiece =
        from.stream()
            .collect(Collectors.toMap(offer -> offer.thing().main().code(), Function.identity()));
    Stream<Provision.Worn> worn = plan.assignments().stream();
    return worn.map(one -> byPiece.get(one.piece().code())).toList();
  }
}
