package vestiary.planning;

/**
 * A clash in words.
 *
 * @param about where and when, for example "Saint Anne, Tuesday 8 December, 18:30"
 * @param title states the count, without a full stop
 * @param tight a few words for a narrow column, for example "one white short"
 * @param more further whole sentences: what could be carried, what is lawful instead; may be empty
 */
public record ClashWords(String about, String title, String tight, String more) {

  /** All of it in one paragraph. */
  public String sentence() {
    return (about + ": " + title + ". " + more).strip();
  }
}
