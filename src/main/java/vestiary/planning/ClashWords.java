package vestiary.planning;

/**
 * A clash in words.
 *
 * @param about where and when, for example "Saint Anne, Tuesday 8 December, 18:30"
 * @param title states the count, without a full stop
 * @param tight a few words for a narrow column, for example "one white short"
 * @param more further whole sentences, as of what could be carried; may be empty
 * @param lawful what the norms allow instead, a whole sentence; may be empty
 */
public record ClashWords(String about, String title, String tight, String more, String lawful) {

  /** All of it in one paragraph. */
  public String sentence() {
    return about + ": " + told();
  }

  /** What stands under its place and time. */
  public String told() {
    return (inShort() + " " + lawful).strip();
  }

  /** The same for a sheet of paper that has little room. */
  public String inShort() {
    return (title + ". " + more).strip();
  }
}
