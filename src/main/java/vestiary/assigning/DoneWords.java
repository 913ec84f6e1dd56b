package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import vestiary.web.Speech;

/** What was done at the last press, for the page that is shown after it. */
@ApplicationScoped
class DoneWords {

  private final AssignCelebrants assign;

  DoneWords(AssignCelebrants assign) {
    this.assign = assign;
  }

  /**
   * None if nothing was.
   *
   * @param id of the assignment; {@code null} or empty if there is none
   * @throws vestiary.problem.Refused if there is no such assignment
   */
  List<Done> of(String id, String back) {
    if (id == null || id.isBlank()) {
      return List.of();
    }
    Optional<Integer> size = assign.findSize(id);
    return List.of(
        size.isEmpty()
            ? new Done(say("Undone: it is as it was before."), "", back)
            : new Done(
                say(
                    "Named: %s a new celebrant. What he wears follows him; a plan that is applied for that week offers itself anew.",
                    size.get() == 1
                        ? say("one Mass has")
                        : Speech.count(size.get(), "Mass") + say(" have")),
                "/celebrants/assignments/%s/undo".formatted(id),
                back));
  }
}
