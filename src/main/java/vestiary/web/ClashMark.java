package vestiary.web;

import java.util.Set;

/**
 * How grave a clash is: a lozenge, and the word beside it.
 *
 * @param severity {@code must} (filled), {@code decide} (half filled) or {@code know} (open)
 * @param word the severity in the reader's language, for example "Must be mended"
 */
public record ClashMark(String severity, String word) {

  private static final Set<String> SEVERITIES = Set.of("must", "decide", "know");

  public ClashMark {
    if (!SEVERITIES.contains(severity)) {
      throw new IllegalArgumentException("No severity of a clash: " + severity);
    }
  }
}
