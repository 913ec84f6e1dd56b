package vestiary.plan;

/**
 * A journey in words.
 *
 * @param day for example "Tuesday 8 December"
 * @param leave for example "17:46"
 * @param arrive for example "18:00"
 * @param pieces for example "HT-W1 and HT-W2, chasuble and stole"
 * @param by for example "with Father Ilverton"; "a journey of its own" where nobody drives that way
 * @param note for example "Can be taken from 12:15."; may be empty
 * @param state how the asking stands, for example "said yes"; may be empty
 * @param address of its page; may be empty
 */
public record TripView(
    String day,
    String leave,
    String arrive,
    String from,
    String to,
    String pieces,
    String by,
    String note,
    String state,
    String address) {

  /** The same with how the asking stands, and the way to its page. */
  public TripView with(String told, String page) {
    return new TripView(day, leave, arrive, from, to, pieces, by, note, told, page);
  }
}
