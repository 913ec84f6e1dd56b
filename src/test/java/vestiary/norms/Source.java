package vestiary.norms;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where a fact stands. The publication comes first; what is in brackets is a note. A fact that
 * nobody was seen to print says so: "reckoned from" a norm, "from memory", or "common practice".
 */
record Source(String text) {

  private static final Pattern NORM =
      Pattern.compile(
          "(UNLY|GIRM|RS|canon|Notitiae|Paschale solemnitatis|Roman Missal"
              + "|General Introduction to the Lectionary|Order of Celebrating Matrimony"
              + "|Pastoral Care of the Sick|Ceremonial of Bishops|Order of Christian Funerals"
              + "|Holy Communion and Worship of the Eucharist)\\b.*");

  Source {
    if (text.isBlank()) throw new IllegalArgumentException("A fact needs its source.");
  }

  /** Whether the page or norm named says so of this day, or of this kind of day by name. */
  boolean isPublished() {
    return !isCommonPractice() && !text.contains("reckoned") && !text.contains("from memory");
  }

  boolean isCommonPractice() {
    return text.contains("common practice");
  }

  /** The publication without its notes; of a norm the name alone, whatever the paragraph. */
  String publication() {
    String first = text.replaceAll("\\s*\\([^)]*\\)", "").split(";")[0].strip();
    Matcher norm = NORM.matcher(first);
    return norm.matches() ? norm.group(1) : first;
  }
}
