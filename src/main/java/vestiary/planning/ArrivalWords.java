package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.ZoneId;
import java.util.Optional;
import vestiary.people.Arrival;
import vestiary.people.Person;
import vestiary.schedule.DatedMass;
import vestiary.web.Speech;

/** Says who comes to a Mass from outside, when, and with what. */
final class ArrivalWords {

  private ArrivalWords() {}

  /** For example "Wexcombe comes at 10:10 and brings his own vestments"; empty if nobody said. */
  static String of(DatedMass mass, SpanToCheck span) {
    ZoneId zone = span.cluster().zone();
    return Speech.list(
        span.attendance().to(mass.id().value()).stream()
            .flatMap(one -> find(mass, one).map(who -> words(one, who, zone)).stream())
            .toList());
  }

  /** Whoever is named no more does not come. */
  static Optional<Person> find(DatedMass mass, Arrival arrival) {
    return mass.people().stream().filter(who -> who.id().equals(arrival.person())).findFirst();
  }

  private static String words(Arrival one, Person who, ZoneId zone) {
    String brings =
        switch (one.brings()) {
          case NOT_SAID -> "";
          case OWN -> say(" and brings his own vestments");
          case NOTHING -> say(" and brings no vestments");
        };
    return say(
        "%s comes at %s%s", who.tightName(), Speech.clock(one.arrives().atZone(zone)), brings);
  }
}
