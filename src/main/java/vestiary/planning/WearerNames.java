package vestiary.planning;

import java.util.List;
import java.util.Optional;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;
import vestiary.web.Speech;

/** Who wears something at a Mass: by name where names are known, else by number. */
public final class WearerNames {

  private WearerNames() {}

  /** The person by name, as far as those who vest are named in the order of their numbers. */
  public static Optional<Person> find(DatedMass mass, Wearer wearer) {
    return switch (wearer.role()) {
      case PRINCIPAL, MINISTER -> mass.findCelebrant();
      case CONCELEBRANT -> nth(named(mass, false), wearer.ordinal());
      case DEACON -> nth(named(mass, true), wearer.ordinal());
      default -> Optional.empty();
    };
  }

  /** For example "Father Ambrose Tarnwick" or "Second concelebrant". */
  public static String of(DatedMass mass, Wearer wearer) {
    return find(mass, wearer).map(Person::calledName).orElseGet(() -> counted(mass, wearer));
  }

  private static String counted(DatedMass mass, Wearer wearer) {
    String noun = RoleWords.noun(wearer.role());
    boolean alone = RoleWords.isTheOne(wearer.role()) || isOnlyOne(mass, wearer.role());
    return Speech.sentence(alone ? Speech.noun(1, noun) : Speech.nth(wearer.ordinal(), noun));
  }

  private static boolean isOnlyOne(DatedMass mass, Role role) {
    return role == Role.CONCELEBRANT && mass.concelebrants() == 1
        || role == Role.DEACON && mass.deacons() == 1;
  }

  private static List<Person> named(DatedMass mass, boolean deacons) {
    return mass.named().stream()
        .filter(person -> (person.role() == PersonRole.DEACON) == deacons)
        .filter(person -> !mass.celebrants().contains(person))
        .toList();
  }

  private static Optional<Person> nth(List<Person> people, int ordinal) {
    return people.stream().skip(ordinal - 1L).findFirst();
  }
}
