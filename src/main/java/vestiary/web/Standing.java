package vestiary.web;

import java.util.List;

/**
 * How things stand, said first on a page: "Nineteen Masses. ◆ Four things must be mended, ⬖ one is
 * to be decided."
 *
 * @param sentence one or more whole sentences, with their full stops
 * @param counts the clashes by severity, gravest first; empty if nothing stands in the way
 */
public record Standing(String sentence, List<Count> counts) {

  public Standing {
    counts = List.copyOf(counts);
  }

  /**
   * @param words for example "Four things must be mended", without a full stop
   */
  public record Count(ClashMark mark, String words) {}
}
