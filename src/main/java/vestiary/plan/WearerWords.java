package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.people.Person;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Role;
import vestiary.web.Speech;

/** Names who wears something. */
final class WearerWords {

  private final Map<UUID, DatedMass> masses;

  WearerWords(SpanToCheck span) {
    this.masses =
        span.asked().stream().collect(Collectors.toMap(mass -> mass.id().value(), mass -> mass));
  }

  /** Empty if the Mass is no longer in the schedule. */
  Optional<DatedMass> findMass(UUID id) {
    return Optional.ofNullable(masses.get(id));
  }

  /** At the head of a sentence, for example "Tarnwick" or "Second concelebrant". */
  String who(PlanResult.Person person) {
    return Speech.sentence(named(person).orElse(counted(person, false)));
  }

  /** Within a sentence, for example "Tarnwick" or "the second concelebrant". */
  String within(PlanResult.Person person) {
    return named(person).orElse(counted(person, true));
  }

  private Optional<String> named(PlanResult.Person person) {
    boolean byName = person.role() == Role.PRINCIPAL || person.role() == Role.MINISTER;
    return byName
        ? findMass(person.mass()).flatMap(DatedMass::findCelebrant).map(Person::tightName)
        : Optional.empty();
  }

  private static String counted(PlanResult.Person person, boolean isThe) {
    return switch (person.role()) {
      case PRINCIPAL -> one("celebrant", isThe);
      case MINISTER -> one("minister", isThe);
      default -> nth(person, isThe);
    };
  }

  private static String one(String noun, boolean isThe) {
    return isThe ? Speech.the(noun) : Speech.noun(1, noun);
  }

  private static String nth(PlanResult.Person person, boolean isThe) {
    String nth = Speech.nth(person.ordinal(), person.role().id());
    return isThe ? say("the %s", nth) : nth;
  }
}
