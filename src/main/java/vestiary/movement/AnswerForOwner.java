package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import vestiary.plan.PlanAnew;
import vestiary.pool.NoteConsent;
import vestiary.problem.Asked;

/** Takes an owner's yes or no. A no has what it touches planned anew. */
@ApplicationScoped
class AnswerForOwner {

  private static final int LONGEST_NAME = 200;
  private static final int WHATEVER = -1;

  private final ReadOwners owners;
  private final NoteConsent consents;
  private final PlanAnew anew;

  AnswerForOwner(ReadOwners owners, NoteConsent consents, PlanAnew anew) {
    this.owners = owners;
    this.consents = consents;
    this.anew = anew;
  }

  /**
   * What was pressed.
   *
   * @param by who notes the answer; may be left out
   * @param version that was seen; left out: whatever it is
   */
  record Request(String by, Integer version) {}

  /**
   * Notes the answer.
   *
   * @return after a no the plan that is made without his pieces; empty if no plan holds
   */
  Optional<UUID> answer(String mass, String owner, boolean granted, Request request) {
    Asked asked = new Asked();
    String by = asked.text("by", request.by(), LONGEST_NAME);
    asked.refuseIfFaulty();
    OwnerAsked found = owners.get(mass, owner);
    consents.note(
        new NoteConsent.Answer(
            found.mass().id(),
            found.pieces(),
            granted,
            by,
            request.version() == null ? WHATEVER : request.version()));
    return granted ? Optional.empty() : anew.touching(found.mass().date());
  }
}
