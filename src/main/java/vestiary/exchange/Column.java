package vestiary.exchange;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A column of a list that can be brought in.
 *
 * @param name as written in the header line; letter case does not matter there
 * @param required whether the column must be there and filled in on every line
 * @param meaning what it holds, in a few words for people
 */
public record Column(String name, boolean required, String meaning) {

  /** As many characters as a field of a form or the API may have. */
  private static final int LONGEST = 2_000;

  private static final Pattern HEAD = Pattern.compile("([^;:,]+)[;:,]\\s+(.+)");

  static Column required(String name, String meaning) {
    return new Column(name, true, meaning);
  }

  static Column optional(String name, String meaning) {
    return new Column(name, false, meaning);
  }

  /** What it holds, in so few words that they can head it. */
  String heading() {
    return HEAD.matcher(say(meaning)).replaceFirst("$1");
  }

  /** What else is to be known of it; may be empty. */
  String more() {
    Matcher head = HEAD.matcher(say(meaning));
    return head.matches() ? head.group(2) : "";
  }

  /** What is wrong with a text in this column, whatever it means; a sentence for each fault. */
  List<String> faults(String text) {
    List<String> faults = new ArrayList<>();
    if (required && text.isEmpty()) {
      faults.add(say("The cell is empty; it must be filled in."));
    }
    if (text.length() > LONGEST) {
      faults.add(say("Write at most %,d characters.", LONGEST));
    }
    if (text.chars().anyMatch(c -> Character.isISOControl(c) && "\n\r\t".indexOf(c) < 0)) {
      faults.add(say("Take out the character that cannot be printed."));
    }
    return faults;
  }
}
