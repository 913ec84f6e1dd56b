package vestiary.movement;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Optional;
import java.util.UUID;
import vestiary.asking.AnswerAsking;
import vestiary.asking.AskCarrier;
import vestiary.asking.AskedTrip;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.plan.PlanAnew;
import vestiary.plan.PlanResult;
import vestiary.vesting.ChurchId;

/** Asks somebody to carry, and takes the answer. A no has what it touches planned anew. */
@ApplicationScoped
class Carry {

  private final ReadErrands errands;
  private final AskCarrier ask;
  private final AnswerAsking answer;
  private final PlanAnew anew;
  private final AskByMail mail;

  Carry(ReadErrands errands, AskCarrier ask, AnswerAsking answer, PlanAnew anew, AskByMail mail) {
    this.errands = errands;
    this.ask = ask;
    this.answer = answer;
    this.anew = anew;
    this.mail = mail;
  }

  /** Asks somebody by name, and by mail where that is set up and his address known. */
  @Transactional
  void ask(String id, AskCarrier.Request request) {
    PlanResult.Trip trip = errands.get(id).needed().trip();
    ask.ask(
        new AskedTrip(
            trip.id(),
            new ChurchId(trip.from()),
            new ChurchId(trip.to()),
            trip.leaveBy(),
            trip.carrier(),
            trip.pieces()),
        request);
    mail.send(errands.get(id));
  }

  /** He takes it. */
  void accept(String id, AnswerAsking.Request request) {
    change(id, AskingState.ACCEPTED, request);
  }

  /**
   * He does not; a plan without him is made, and waits to be looked at.
   *
   * @return its id; empty if no plan holds for that day
   */
  Optional<UUID> decline(String id, AnswerAsking.Request request) {
    ReadErrands.Found found = errands.get(id);
    Errand errand = found.needed();
    Asking declined = answer.change(errand.trip().id(), AskingState.DECLINED, request);
    Optional<UUID> plan =
        anew.touching(errand.trip().arriveBy().atZone(found.cluster().zone()).toLocalDate());
    plan.ifPresent(made -> answer.offer(errand.trip().id(), declined, made));
    return plan;
  }

  /** The pieces are there. */
  void done(String id, AnswerAsking.Request request) {
    change(id, AskingState.DONE, request);
  }

  /** Takes the asking back; also where the trip is not needed any more. */
  void withdraw(String id, AnswerAsking.Request request) {
    errands.get(id);
    answer.change(UUID.fromString(id), AskingState.WITHDRAWN, request);
  }

  private void change(String id, AskingState state, AnswerAsking.Request request) {
    answer.change(errands.get(id).needed().trip().id(), state, request);
  }
}
