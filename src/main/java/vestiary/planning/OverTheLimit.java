package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.celebrant.CountedDay;
import vestiary.allocation.celebrant.Portion;
import vestiary.allocation.celebrant.WhyNot;
import vestiary.cluster.CountBy;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/**
 * Says that a priest has more Masses on one counted day than the leave on file allows, which cannot
 * stay so, or than he takes by his own wish, which is to be decided. What the leave allows is not
 * told at all.
 *
 * <p>Source: Code of Canon Law, canon 905; General Instruction of the Roman Missal 204.
 */
final class OverTheLimit {

  /** On Sundays and holy days; more lies with the Holy See alone (canon 905 § 2). */
  private static final int MOST_BY_LEAVE = 3;

  private final NamedPeople people;
  private final Person person;
  private final List<DatedMass> masses;
  private final WhyNot.TooMany many;

  /**
   * @param masses his of that day, by start
   */
  OverTheLimit(NamedPeople people, Person person, List<DatedMass> masses, WhyNot.TooMany many) {
    this.people = people;
    this.person = person;
    this.masses = List.copyOf(masses);
    this.many = many;
  }

  Clash clash() {
    return new Clash(
        ClashId.of(ClashKind.LIMIT, masses, person.id().toString()),
        ClashKind.LIMIT,
        many.own() ? ClashSeverity.DECIDE : ClashSeverity.MUST,
        masses,
        new ClashWords(
            CheckClashes.about(masses.get(0)),
            title(),
            say("%s, %s Mass", person.tightName(), Speech.ordinal(many.number())),
            more(),
            otherCount()),
        List.of(),
        WhoElse.ways(masses, person));
  }

  private String title() {
    return Speech.sentence(
        say(
            "%s has %s %s, and %s",
            person.inWords(),
            Speech.count(many.number(), "Mass"),
            on(many.day(), people.countBy()),
            many.own()
                ? say("takes %s a day", Speech.count(many.most()))
                : say("the leave on file is for ") + Speech.count(many.most())));
  }

  private String more() {
    List<String> more = new ArrayList<>();
    more.add(
        "%s%s."
            .formatted(
                Speech.sentence(Speech.list(masses.stream().map(WhoElse::which).toList())),
                many.own() ? "" : say("; concelebrating counts (can. 905 § 2)")));
    if (!many.own() && many.number() > MOST_BY_LEAVE) {
      more.add(say("So many are beyond what a bishop can permit; the Holy See alone could."));
    }
    WhoElse others = new WhoElse(people);
    masses.stream().flatMap(one -> others.sentence(one, person).stream()).forEach(more::add);
    more.add(say("Give one of them to another, or leave one out."));
    if (!many.own() && many.number() <= MOST_BY_LEAVE) {
      more.add(
          say(
              "If the bishop has given leave for more, enter it with %s under People, or in Settings if all have it.",
              person.inWords()));
    }
    return String.join(" ", more);
  }

  /** What the other way of counting would say; empty if it says the same of all of them. */
  private String otherCount() {
    CountBy other = people.countBy() == CountBy.CALENDAR ? CountBy.LITURGICAL : CountBy.CALENDAR;
    Optional<DatedMass> tooMany =
        masses.stream()
            .filter(
                mass ->
                    people.ofOneDay(person, mass, other).size() > people.most(person, mass, other))
            .findFirst();
    return tooMany.isPresent()
        ? ""
        : say(
            other == CountBy.CALENDAR
                ? word("Counted by the calendar day he would keep within it.")
                : word("Counted by the liturgical day he would keep within it."));
  }

  private static String on(CountedDay day, CountBy countBy) {
    String date = Speech.day(day.date());
    if (day.portion() == Portion.VIGIL) {
      return say("among the Easter Vigils of ") + date;
    }
    return (countBy == CountBy.CALENDAR ? say("on ") : say("for ")) + date;
  }
}
