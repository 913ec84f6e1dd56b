package vestiary.reservation;

import java.util.List;
import vestiary.sending.SendOut;
import vestiary.sending.TakeIn;

/**
 * How what is set aside goes out, as the API reads it; what is left out is as is usual.
 *
 * @param due when it is to be back: a date, whose end is meant, or a date and time
 * @param carrier name of who carries it
 * @param signer name of who signs for it there
 * @param without codes of pieces of the set that do not go along
 * @param ownersAsked whether the owners who want to be asked have said yes
 */
record OutBody(
    String due,
    String carrier,
    String signer,
    String condition,
    List<String> without,
    Boolean ownersAsked) {

  static final OutBody USUAL = new OutBody(null, null, null, null, null, null);

  SendOut.Request toMass(String mass) {
    return new SendOut.Request(
        null, null, due, mass, carrier, signer, condition, without, ownersAsked);
  }

  /**
   * How it comes back.
   *
   * @param church short name of the church where it is now; absent: its own
   * @param taker name of who takes it in
   * @param without codes of pieces of the set that are still out
   */
  record Back(String church, String taker, String condition, List<String> without) {

    static final Back USUAL = new Back(null, null, null, null);

    TakeIn.Request toRequest() {
      return new TakeIn.Request(church, taker, condition, without);
    }
  }
}
