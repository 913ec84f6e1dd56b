package vestiary.serving;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.Optional;
import vestiary.calendar.Term;
import vestiary.people.Person;
import vestiary.schedule.ServesAs;

/**
 * What the last press has done.
 *
 * @param sentence empty if nothing
 * @param again who can be put back
 */
record ServingDone(String sentence, List<ServingView.Again> again) {

  static final ServingDone NOTHING = new ServingDone("", List.of());

  ServingDone {
    again = List.copyOf(again);
  }

  /**
   * As the address says it.
   *
   * @param done "named" or "off"
   * @param role as what somebody was taken off
   */
  static ServingDone of(String done, Optional<Person> person, String role) {
    if (person.isEmpty()) {
      return NOTHING;
    }
    String name = person.get().name();
    return switch (done) {
      case "named" -> new ServingDone(say("%s is named.", name), List.of());
      case "off" ->
          new ServingDone(
              say("%s is taken off.", name),
              Term.find(ServesAs.class, role).stream()
                  .map(as -> new ServingView.Again(person.get().slug(), as.id(), name))
                  .toList());
      default -> NOTHING;
    };
  }
}
