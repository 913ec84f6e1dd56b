package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.DayOfWeek;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.planning.Clash;
import vestiary.planning.ClashSeverity;
import vestiary.planning.MassWords;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.PieceWords;
import vestiary.schedule.DatedMass;
import vestiary.schedule.PlanFit;
import vestiary.vesting.Step;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Sets out a plan: how good it is, what it changes, who wears what, what is carried. */
final class PlanSheet {

  private static final Link NOWHERE = new Link("", "");

  /** One person and one set, or one piece by itself. */
  private record Bundle(PlanResult.Person person, String name) {}

  private final PlanFound plan;
  private final SpanToCheck span;
  private final List<Clash> clashes;
  private final PlanDifference difference;
  private final List<PlanFit.Unfit> unfit;
  private final TripWords words;
  private final WearerWords wearers;
  private final Map<UUID, DatedMass> masses;

  /**
   * @param span the plan's dates as they are now
   * @param clashes of these dates
   * @param carriedNow what is carried by the plan that holds
   * @param unfit if it holds and does not fit any more; else empty
   */
  PlanSheet(
      PlanFound plan,
      SpanToCheck span,
      List<Clash> clashes,
      List<CarriedPiece> carriedNow,
      List<PlanFit.Unfit> unfit) {
    this.plan = plan;
    this.span = span;
    this.clashes = clashes;
    this.difference = new PlanDifference(span, plan.result(), carriedNow);
    this.unfit = unfit;
    this.wearers = new WearerWords(span);
    this.words = new TripWords(span.churches(), span.pieces(), span.cluster().zone());
    this.masses =
        span.asked().stream().collect(Collectors.toMap(mass -> mass.id().value(), mass -> mass));
  }

  PlanView view(Frame frame, String problem) {
    String address = "/plans/" + plan.id();
    return new PlanView(
        frame,
        Speech.span(plan.first(), plan.last()),
        address,
        turn(),
        PlanWords.status(plan),
        plan.isAtWork(),
        PlanWords.score(plan),
        differs(),
        changes(),
        unfit,
        problem,
        doing(address),
        lacking(),
        churches(),
        plan.result().trips().stream()
            .sorted(Comparator.comparing(PlanResult.Trip::leaveBy))
            .map(words::view)
            .toList(),
        plan.result().toTakeHome().stream()
            .map(resting -> resting().view(resting, Optional.empty(), false))
            .toList());
  }

  private RestingWords resting() {
    return new RestingWords(span.churches(), span.pieces(), span.cluster().zone());
  }

  private List<Link> turn() {
    String monday =
        plan.first().with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)).toString();
    return List.of(
        new Link(say("The week"), "/week/" + monday),
        new Link(say("The journeys"), "/movements?week=" + monday));
  }

  private String differs() {
    if (!plan.isUsable()) {
      return "";
    }
    String same = plan.applied() ? say("This plan holds.") : difference.words();
    return unfit.isEmpty() ? (same + " " + difference.outdated()).strip() : same;
  }

  /** Church by church; a first plan changes everything, and its churches say so below. */
  private List<PlanView.Changed> changes() {
    if (!plan.isUsable() || plan.applied() || difference.isFirst()) {
      return List.of();
    }
    List<DifferenceWords.Change> all = new DifferenceWords(span, difference).changes();
    return span.churches().stream()
        .map(church -> changed(church, all))
        .filter(changed -> !changed.sentences().isEmpty())
        .toList();
  }

  private static PlanView.Changed changed(Church church, List<DifferenceWords.Change> all) {
    return new PlanView.Changed(
        church.name(),
        all.stream()
            .filter(one -> one.church().equals(church.id().value()))
            .map(DifferenceWords.Change::sentence)
            .distinct()
            .toList());
  }

  private PlanView.Doing doing(String address) {
    boolean again = !plan.isAtWork();
    return new PlanView.Doing(
        plan.isUsable() && !plan.applied() ? address + "/apply" : "",
        plan.applied() ? address + "/undo" : "",
        plan.isAtWork() && !plan.cancelled() ? address + "/cancel" : "",
        again ? "/plans" : "",
        plan.first().toString(),
        plan.last().toString());
  }

  private List<PlanView.Lacking> lacking() {
    List<PlanView.Lacking> said = new ArrayList<>();
    plan.result().unmet().forEach(one -> said.add(lacking(one, ClashSeverity.MUST)));
    plan.result().leftOut().forEach(one -> said.add(lacking(one, ClashSeverity.KNOW)));
    plan.result()
        .contradictions()
        .forEach(
            one ->
                said.add(
                    new PlanView.Lacking(
                        ClashSeverity.MUST.mark(), say("Held in two places"), one, NOWHERE)));
    return said;
  }

  private PlanView.Lacking lacking(PlanResult.Lacking one, ClashSeverity severity) {
    Optional<DatedMass> mass = Optional.ofNullable(masses.get(one.person().mass()));
    String thing = Speech.tinted(Speech.colour(one.colour()), PieceWords.kind(one.kind()));
    String sentence =
        severity == ClashSeverity.MUST
            ? say("%s has no %s.", wearers.who(one.person()), thing)
            : say(
                "%s: %s, for want of a %s (%s).",
                wearers.who(one.person()), step(one.step()), thing, one.source());
    return new PlanView.Lacking(
        severity.mark(),
        mass.map(PlanSheet::about).orElse(say("A Mass that is gone")),
        sentence,
        mass.flatMap(this::findClash)
            .map(clash -> new Link(say("See why"), clash.address()))
            .orElse(NOWHERE));
  }

  private Optional<Clash> findClash(DatedMass mass) {
    return clashes.stream()
        .filter(clash -> clash.findProof().isPresent() && clash.concerns(mass))
        .findFirst();
  }

  private static String step(String id) {
    return Term.find(Step.class, id).map(step -> say(step.sentence())).orElse(say("left out"));
  }

  private static String about(DatedMass mass) {
    return "%s, %s, %s"
        .formatted(Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name());
  }

  private List<PlanView.Church> churches() {
    Map<UUID, List<PlanResult.Worn>> byMass =
        plan.result().worn().stream().collect(Collectors.groupingBy(one -> one.person().mass()));
    return span.churches().stream()
        .map(church -> church(church, byMass))
        .filter(church -> !church.masses().isEmpty())
        .toList();
  }

  private PlanView.Church church(Church church, Map<UUID, List<PlanResult.Worn>> byMass) {
    return new PlanView.Church(
        church.name(),
        church.place(),
        span.asked().stream()
            .filter(mass -> mass.church().id().equals(church.id()))
            .filter(mass -> byMass.containsKey(mass.id().value()))
            .map(mass -> mass(mass, byMass.get(mass.id().value())))
            .toList());
  }

  private PlanView.Mass mass(DatedMass mass, List<PlanResult.Worn> worn) {
    Map<Bundle, List<PlanResult.Worn>> bundles = new LinkedHashMap<>();
    worn.forEach(
        one ->
            bundles
                .computeIfAbsent(
                    new Bundle(one.person(), one.set().isEmpty() ? one.piece() : one.set()),
                    unknown -> new ArrayList<>())
                .add(one));
    return new PlanView.Mass(
        Speech.day(mass.date()),
        Speech.clock(mass.start()),
        "/masses/" + mass.id().value(),
        new Ribbon(mass.colour(), Speech.colour(mass.colour())),
        Speech.sentence(MassWords.whole(mass, Speech.localeOr(span.cluster().language()))),
        bundles.values().stream().map(this::wear).toList());
  }

  private PlanView.Wear wear(List<PlanResult.Worn> pieces) {
    PlanResult.Worn one = pieces.get(0);
    return new PlanView.Wear(
        wearers.who(one.person()),
        words.named(pieces.stream().map(PlanResult.Worn::piece).toList()),
        one.set().isEmpty()
            ? NOWHERE
            : new Link(
                say("Its week"), "/vestments/sets/%s/week/%s".formatted(one.set(), plan.first())),
        findTrip(one).map(words::inShort).orElse(""),
        one.held() ? say("held") : difference.isChanged(one.person()) ? say("changed") : "",
        why(pieces));
  }

  /** Of the piece that comes first, and what is otherwise with those that come with it. */
  private static List<String> why(List<PlanResult.Worn> pieces) {
    List<String> first = pieces.get(0).why();
    return Stream.concat(
            first.stream(),
            pieces.stream()
                .skip(1)
                .flatMap(
                    piece ->
                        piece.why().stream()
                            .filter(sentence -> !first.contains(sentence))
                            .map(
                                sentence ->
                                    "%s: %s"
                                        .formatted(
                                            Speech.sentence(PieceWords.kind(piece.kind())),
                                            sentence))))
        .distinct()
        .toList();
  }

  /** The journey that brought it, unless it was worn there since. */
  private Optional<PlanResult.Trip> findTrip(PlanResult.Worn one) {
    return plan.result().trips().stream()
        .filter(trip -> trip.to().equals(one.church()) && trip.pieces().contains(one.piece()))
        .filter(trip -> !trip.arriveBy().isAfter(one.from()))
        .max(Comparator.comparing(PlanResult.Trip::arriveBy))
        .filter(
            trip ->
                plan.result().worn().stream()
                    .filter(other -> other.piece().equals(one.piece()))
                    .noneMatch(
                        other ->
                            other.from().isBefore(one.from())
                                && !other.from().isBefore(trip.arriveBy())));
  }
}
