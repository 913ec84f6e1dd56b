package vestiary.assigning;

/**
 * What a press that named celebrants did.
 *
 * @param undo where a press undoes it; empty once it is undone
 * @param back where the page is to be shown again
 */
public record Done(String sentence, String undo, String back) {}
