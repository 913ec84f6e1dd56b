package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import vestiary.web.English;

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
            ? new Done("Undone: it is as it was before.", "", back)
            : new Done(
                "Named: %s a new celebrant. What he wears follows him; a plan that is applied for that week offers itself anew."
                    .formatted(
                        size.get() == 1
                            ? "one Mass has"
                            : English.count(size.get(), "Mass") + " have"),
                "/celebrants/assignments/%s/undo".formatted(id),
                back));
  }
}
