package vestiary.planning;

/**
 * A remedy that was applied and is not undone.
 *
 * @param clash id of the clash it mended
 * @param place in the list as it was, from 1
 * @param about of the clash, for example "Saint Anne, Tuesday 8 December, 18:30"
 * @param title of the clash
 * @param sentence what was done
 * @param applied when, for example "26 November 2026, 10:42"
 * @param at the same, ISO 8601
 */
public record AppliedRemedy(
    String clash,
    int place,
    String about,
    String title,
    String sentence,
    String applied,
    String at) {

  /** Where the form to undo it is sent. */
  public String undo() {
    return "/clashes/%s/%s/remedies/%d/undo".formatted(clash.substring(0, 10), clash, place);
  }
}
