package vestiary.sending;

import java.util.List;

/**
 * Going out as the API reads it; what is left out is as is usual.
 *
 * @param church short name of the church it goes to; absent where {@code whom} or {@code mass} says
 *     it
 * @param whom who gets it outside the cluster
 * @param mass id of the Mass it goes for
 * @param due a date, whose end is meant, or a date and time
 * @param carrier name of who carries it
 * @param signer name of who signs for it there
 * @param without codes of pieces of the set that do not go along
 * @param ownersAsked whether the owners who want to be asked have said yes
 */
record OutBody(
    String church,
    String whom,
    String mass,
    String due,
    String carrier,
    String signer,
    String condition,
    List<String> without,
    Boolean ownersAsked) {

  SendOut.Request toRequest() {
    return new SendOut.Request(
        church, whom, due, mass, carrier, signer, condition, without, ownersAsked);
  }

  /**
   * Coming back as the API reads it.
   *
   * @param church short name of the church where it is now; absent: its own
   * @param taker name of who takes it in
   * @param without codes of pieces of the set that are still out
   */
  record BackBody(String church, String taker, String condition, List<String> without) {

    TakeIn.Request toRequest() {
      return new TakeIn.Request(church, taker, condition, without);
    }
  }
}
