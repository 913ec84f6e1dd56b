package vestiary.reservation;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.pool.KeepHeld;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.sending.FindItem;
import vestiary.sending.Item;
import vestiary.sending.SendOut;
import vestiary.sending.TakeIn;

/** What is set aside goes out to its Mass, and comes back from it. */
@ApplicationScoped
@Transactional
class SendReserved {

  private final ReservationRows rows;
  private final KeepHeld held;
  private final FindItem items;
  private final SendOut send;
  private final TakeIn take;

  SendReserved(ReservationRows rows, KeepHeld held, FindItem items, SendOut send, TakeIn take) {
    this.rows = rows;
    this.held = held;
    this.items = items;
    this.send = send;
    this.take = take;
  }

  /**
   * Sends it out to its Mass.
   *
   * @throws Refused if there is none, it was given up or is out, or as {@link SendOut#send} does
   */
  void out(String id, OutBody how) {
    ReservationRow row = rows.getLocked(id);
    switch (row.toState()) {
      case HELD -> send.send(item(row), how.toMass(row.massId.toString()));
      case OUT -> throw taken(say("This is out already. Say that it is back first."));
      case RETURNED -> throw taken(say("This was out and is back. Set it aside anew."));
      case RELEASED -> throw taken(say("This was given up. Set it aside anew."));
    }
  }

  /**
   * Takes in what of it is out.
   *
   * @throws Refused if there is none, it is not out, or as {@link TakeIn#take} does
   */
  void back(String id, OutBody.Back how) {
    ReservationRow row = rows.getLocked(id);
    if (row.toState() != ReservationState.OUT) {
      throw taken(say("This is not out, so that it cannot come back."));
    }
    take.take(item(row), how.toRequest());
  }

  private Item item(ReservationRow row) {
    String code = held.codes().get(row.thing());
    return row.setId == null ? items.getPiece(code) : items.getSet(code);
  }

  private static Refused taken(String sentence) {
    return new Refused(new Refusal.Taken("", say("%s Nothing was changed.", sentence)));
  }
}
