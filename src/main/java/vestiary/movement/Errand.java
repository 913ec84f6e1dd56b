package vestiary.movement;

import java.util.List;
import java.util.Optional;
import vestiary.asking.Asking;
import vestiary.asking.AskingState;
import vestiary.plan.PlanResult;

/**
 * A trip with everybody who was asked for it.
 *
 * @param askings the first asked first
 */
record Errand(PlanResult.Trip trip, List<Asking> askings) {

  /** What the API says while nobody is asked. */
  static final String PROPOSED = "proposed";

  Errand {
    askings = List.copyOf(askings);
  }

  /** Who has it, or may have it. */
  Optional<Asking> findOpen() {
    return askings.stream().filter(one -> one.state().isOpen()).findFirst();
  }

  /** The last who said no, while nobody else is asked. */
  Optional<Asking> findDeclined() {
    return findOpen().isPresent()
        ? Optional.empty()
        : askings.stream()
            .filter(one -> one.state() == AskingState.DECLINED)
            .reduce((first, second) -> second);
  }

  /** Proposed, asked, accepted, declined or done. */
  String state() {
    return findOpen().or(this::findDeclined).map(one -> one.state().id()).orElse(PROPOSED);
  }

  /** Under whom it stands in the list of drivers; empty while nobody is known. */
  String driver() {
    return findOpen().map(Asking::name).orElseGet(() -> isDeclinedByRider() ? "" : trip.carrier());
  }

  private boolean isDeclinedByRider() {
    return askings.stream().anyMatch(one -> one.riding() && one.state() == AskingState.DECLINED);
  }
}
