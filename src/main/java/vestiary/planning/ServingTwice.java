package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.schedule.WhoServes;
import vestiary.web.Speech;

/**
 * Finds who serves at a liturgy while named at another. Either can be celebrated without, so
 * somebody decides; nothing must be mended (common practice, no source). Where somebody is away,
 * that alone is said.
 */
final class ServingTwice {

  private final SpanToCheck span;

  private ServingTwice(SpanToCheck span) {
    this.span = span;
  }

  /** Of all Masses of a span, each two once; by the first of them. */
  static List<Clash> of(SpanToCheck span) {
    return new ServingTwice(span).clashes();
  }

  private List<Clash> clashes() {
    List<Clash> clashes = new ArrayList<>();
    List<DatedMass> masses = span.masses();
    for (int i = 0; i < masses.size(); i++) {
      for (int j = i + 1; j < masses.size() && masses.get(i).overlaps(masses.get(j)); j++) {
        both(masses.get(i), masses.get(j), clashes);
      }
    }
    return clashes;
  }

  private void both(DatedMass first, DatedMass second, List<Clash> clashes) {
    for (WhoServes one : first.serving()) {
      if (second.isNamed(one.person().id()) && isThere(one.person(), first, second)) {
        clashes.add(clash(one.person(), first, second));
      }
    }
    for (WhoServes one : second.serving()) {
      boolean isSaid = first.findServing(one.person().id()).isPresent();
      if (!isSaid && first.isNamed(one.person().id()) && isThere(one.person(), first, second)) {
        clashes.add(clash(one.person(), first, second));
      }
    }
  }

  private boolean isThere(Person person, DatedMass first, DatedMass second) {
    return List.of(first, second).stream()
        .allMatch(
            mass ->
                span.attendance()
                    .find(person.id(), mass.start().toInstant(), mass.end().toInstant())
                    .isEmpty());
  }

  private static Clash clash(Person person, DatedMass first, DatedMass second) {
    List<DatedMass> masses = List.of(first, second);
    return new Clash(
        ClashId.of(ClashKind.DOUBLE_BOOKED, masses, "serving " + person.id()),
        ClashKind.DOUBLE_BOOKED,
        ClashSeverity.DECIDE,
        masses,
        new ClashWords(
            CheckClashes.about(first),
            Speech.sentence(
                say(
                    "%s is named here and %s, and %s",
                    person.inWords(), WhoElse.which(second), say("the two overlap"))),
            person.tightName() + say(" twice"),
            say("Name somebody else at one of the two, or do without."),
            ""),
        List.of(),
        masses.stream().map(mass -> WhoElse.serving(mass)).toList());
  }
}
