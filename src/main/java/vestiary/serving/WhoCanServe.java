package vestiary.serving;

import static vestiary.web.Speech.say;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.people.Attendance;
import vestiary.people.Ministry;
import vestiary.people.Person;
import vestiary.planning.RoleAt;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ServesAs;
import vestiary.web.Choice;
import vestiary.web.Speech;

/**
 * Offers whom to name at a Mass: first those who serve in that church, then those who serve in
 * others, then those whose task in the cluster is none at Mass, then those who are named elsewhere
 * at that time, last those who are not available. Why anybody is away is not told.
 *
 * @param around the Masses of the days around it
 */
record WhoCanServe(
    DatedMass mass,
    List<DatedMass> around,
    List<Person> people,
    Map<UUID, Ministry> ministries,
    Attendance attendance) {

  private static final int HERE = 0;
  private static final int OTHER_CHURCHES = 1;
  private static final int WITH_NO_TASK_AT_MASS = 2;
  private static final int ELSEWHERE = 3;
  private static final int AWAY = 4;

  WhoCanServe {
    around = List.copyOf(around);
    people = List.copyOf(people);
    ministries = Map.copyOf(ministries);
  }

  /** All who are not ordained and not named yet. */
  List<Choice.Option> options() {
    return people.stream()
        .filter(person -> !person.role().isOrdained() && !mass.isNamed(person.id()))
        .sorted(Comparator.comparing(this::rank))
        .map(person -> Choice.Option.of(person.slug(), text(person)))
        .toList();
  }

  /** Why somebody may not come; empty if nothing speaks against it. */
  String hindrance(Person person) {
    if (isAway(person)) {
      return say("not available");
    }
    return findElsewhere(person)
        .map(other -> say("named at %s at %s", Speech.clock(other.start()), other.church().name()))
        .orElse("");
  }

  private String text(Person person) {
    String hindrance = hindrance(person);
    String who = "%s, %s".formatted(person.name(), task(person));
    return hindrance.isEmpty() ? who : who + "; " + hindrance;
  }

  private static String task(Person person) {
    return ServesAs.findUsual(person.role())
        .map(as -> say(as.noun(1)))
        .orElseGet(() -> Speech.noun(1, person.role().id()));
  }

  private int rank(Person person) {
    if (isAway(person)) {
      return AWAY;
    }
    if (findElsewhere(person).isPresent()) {
      return ELSEWHERE;
    }
    if (ServesAs.findUsual(person.role()).isEmpty()) {
      return WITH_NO_TASK_AT_MASS;
    }
    Ministry ministry = ministries.getOrDefault(person.id(), Ministry.UNSAID);
    boolean isHere =
        ministry.churches().isEmpty() || ministry.churches().contains(mass.church().id());
    return isHere ? HERE : OTHER_CHURCHES;
  }

  private boolean isAway(Person person) {
    return RoleAt.isAway(mass, person.id(), attendance);
  }

  private Optional<DatedMass> findElsewhere(Person person) {
    return around.stream()
        .filter(other -> !other.id().equals(mass.id()) && other.overlaps(mass))
        .filter(other -> other.isNamed(person.id()))
        .findFirst();
  }
}
