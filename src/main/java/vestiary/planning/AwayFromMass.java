package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import vestiary.people.Absence;
import vestiary.people.AbsenceWords;
import vestiary.people.Arrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.schedule.WhoServes;
import vestiary.web.Link;
import vestiary.web.Speech;

/**
 * Finds who is named at a Mass and away at that time. Without its celebrant it cannot stay so;
 * without one who concelebrates or assists it can be celebrated, and somebody has to say how. Why
 * anybody is away is not told.
 */
final class AwayFromMass {

  private final DatedMass mass;
  private final SpanToCheck span;
  private final Instant begin;
  private final Instant end;

  private AwayFromMass(DatedMass mass, SpanToCheck span) {
    this.mass = mass;
    this.span = span;
    this.begin = mass.start().toInstant();
    this.end = mass.end().toInstant();
  }

  /** None if everybody who is named is there. */
  static List<Clash> of(DatedMass mass, SpanToCheck span) {
    return new AwayFromMass(mass, span).clashes();
  }

  private List<Clash> clashes() {
    List<Clash> clashes = new ArrayList<>();
    mass.findCelebrant().flatMap(this::celebrantAway).ifPresent(clashes::add);
    if (isOpen() && isNobodyLeft()) {
      clashes.add(nobodyLeft());
    }
    companyAway(mass.named(), "away", List.of()).ifPresent(clashes::add);
    companyAway(
            mass.serving().stream().map(WhoServes::person).toList(),
            "serving away",
            List.of(WhoElse.serving(mass)))
        .ifPresent(clashes::add);
    span.attendance().to(mass.id().value()).stream()
        .filter(one -> one.arrives().isAfter(begin))
        .flatMap(one -> ArrivalWords.find(mass, one).map(who -> late(one, who)).stream())
        .forEach(clashes::add);
    return clashes;
  }

  private Optional<Clash> celebrantAway(Person celebrant) {
    return find(celebrant)
        .map(
            absence ->
                clash(
                    ClashKind.NO_CELEBRANT,
                    ClashSeverity.MUST,
                    Speech.sentence(
                        say("%s is not available, and nobody else is named", celebrant.inWords())),
                    say("%s away", celebrant.tightName()),
                    "%s %s%s"
                        .formatted(
                            away(absence),
                            nobodyElse(),
                            say("Name somebody else, choose another time, or cancel it."))));
  }

  /** Whether it asks for a priest and none is named; that one was lost is said already. */
  private boolean isOpen() {
    return mass.kind().isMass()
        && mass.findCelebrant().isEmpty()
        && !mass.ministers().bishop()
        && !mass.chosen().celebrantLost();
  }

  private Clash nobodyLeft() {
    return clash(
        ClashKind.NO_CELEBRANT,
        ClashSeverity.MUST,
        say("Nobody of the cluster who could celebrate is available"),
        say("everybody away"),
        say(
            "All are away at that time, and nobody is named. Ask somebody from outside, choose another time, or cancel it."));
  }

  private Optional<Clash> companyAway(List<Person> named, String because, List<Link> ways) {
    List<Person> away = named.stream().filter(one -> find(one).isPresent()).toList();
    return away.isEmpty() ? Optional.empty() : Optional.of(away(away, because, ways));
  }

  private Clash away(List<Person> away, String because, List<Link> ways) {
    List<String> names = away.stream().map(Person::calledName).toList();
    String when =
        away.stream()
            .map(one -> away(find(one).orElseThrow()))
            .distinct()
            .collect(Collectors.joining(" "));
    return clash(
        ClashKind.MINISTER,
        ClashSeverity.DECIDE,
        say(
            away.size() == 1 ? word("%s is not available") : word("%s are not available"),
            Speech.list(names)),
        away.size() == 1 ? say("%s away", away.get(0).tightName()) : say("%d away", away.size()),
        when + say(" Name somebody else, or do without."),
        because,
        ways);
  }

  private Clash late(Arrival arrival, Person who) {
    return clash(
        ClashKind.MINISTER,
        ClashSeverity.DECIDE,
        Speech.sentence(
            say(
                "%s arrives only at %s",
                who.inWords(), Speech.clock(arrival.arrives().atZone(span.cluster().zone())))),
        say("%s late", who.tightName()),
        say("Ask whether he can come sooner, or name somebody else."),
        "late " + who.id(),
        List.of());
  }

  private Clash clash(
      ClashKind kind, ClashSeverity severity, String title, String tight, String more) {
    return clash(kind, severity, title, tight, more, "away", List.of());
  }

  private Clash clash(
      ClashKind kind,
      ClashSeverity severity,
      String title,
      String tight,
      String more,
      String because,
      List<Link> ways) {
    return new Clash(
        ClashId.of(kind, List.of(mass), because),
        kind,
        severity,
        List.of(mass),
        new ClashWords(CheckClashes.about(mass), title, tight, more, ""),
        List.of(),
        ways);
  }

  private Optional<Absence> find(Person person) {
    return span.attendance().find(person.id(), begin, end);
  }

  private boolean isNobodyLeft() {
    return span.attendance().isNobodyLeft(begin, end);
  }

  private String away(Absence absence) {
    return say("Away %s.", AbsenceWords.span(absence, span.cluster().zone()));
  }

  private String nobodyElse() {
    return isNobodyLeft()
        ? say("Nobody else of the cluster who could celebrate is available either. ")
        : "";
  }
}
