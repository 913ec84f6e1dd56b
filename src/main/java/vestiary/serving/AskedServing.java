package vestiary.serving;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Asked;
import vestiary.schedule.ServesAs;

/** Reads who is to serve, by name and role. */
@ApplicationScoped
class AskedServing {

  /** As many as vest in one role at most. */
  private static final int MOST = 200;

  private static final int LONGEST_NAME = 200;

  private final FindPeople people;

  AskedServing(FindPeople people) {
    this.people = people;
  }

  /** Each with the role that was said, or the usual one; all that is wrong is noted. */
  Map<Person, ServesAs> read(List<NameServing.Wanted> wanted, Asked asked) {
    Map<Person, ServesAs> read = new LinkedHashMap<>();
    if (wanted == null) {
      asked.fault("serving", say("%s is missing.", "serving"));
      return read;
    }
    if (wanted.size() > MOST) {
      asked.fault("serving", say("serving names %d; %d is the most.", wanted.size(), MOST));
      return read;
    }
    for (NameServing.Wanted one : wanted) {
      String name = asked.needed("person", one == null ? null : one.person(), LONGEST_NAME);
      Optional<ServesAs> as =
          asked.findTerm(ServesAs.class, "role", one == null ? null : one.role());
      Optional<Person> found = name.isEmpty() ? Optional.empty() : people.findCalled(name);
      if (found.isEmpty() && !name.isEmpty()) {
        asked.fault(
            "person",
            say("person \"%s\" is nobody of this cluster; enter them under People.", name));
      }
      found.ifPresent(
          person -> {
            refuseOrdained(person, asked);
            if (read.put(person, as.orElseGet(() -> usual(person, asked))) != null) {
              asked.fault("person", say("person %s is named twice.", person.name()));
            }
          });
    }
    return read;
  }

  private static ServesAs usual(Person person, Asked asked) {
    Optional<ServesAs> usual = ServesAs.findUsual(person.role());
    if (usual.isEmpty() && !person.role().isOrdained()) {
      asked.fault("role", say("role is missing: say as what %s serves.", person.name()));
    }
    return usual.orElse(ServesAs.SERVER);
  }

  /** Priests and deacons exercise their own order (GIRM 92 to 94, from memory). */
  private static void refuseOrdained(Person person, Asked asked) {
    if (person.role().isOrdained()) {
      asked.fault(
          "person",
          say(
              "person %s is ordained; name him with the Mass, as celebrant, concelebrant or deacon.",
              person.inWords()));
    }
  }
}
