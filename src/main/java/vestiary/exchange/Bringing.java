package vestiary.exchange;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * What vested persons bring of their own to one Mass.
 *
 * @param role principal, concelebrant, deacon or minister
 * @param count how many of them bring it, 1 or more
 * @param kinds kinds of piece, 1 or more
 */
record Bringing(String role, int count, List<String> kinds) {

  private static final Pattern FORM = Pattern.compile("(\\p{L}+)(?: +(\\d{1,3}))? *:(.+)");

  Bringing {
    kinds = List.copyOf(kinds);
  }

  /** The entries of that cell; refuses the cell if one is not understood. */
  static List<Bringing> parse(Cells cells, String column) {
    return cells.texts(column).stream().flatMap(entry -> parse(cells, column, entry)).toList();
  }

  private static Stream<Bringing> parse(Cells cells, String column, String entry) {
    Matcher form = FORM.matcher(entry);
    if (!form.matches()) {
      cells.refuse(
          column,
          "Write a role, a colon and kinds of piece, for example principal:chasuble+stole.");
      return Stream.empty();
    }
    String role = form.group(1).toLowerCase(Locale.ROOT);
    int count = form.group(2) == null ? 1 : Integer.parseInt(form.group(2));
    List<String> kinds = kinds(form.group(3));
    check(cells, column, role, Words.VESTED);
    kinds.forEach(kind -> check(cells, column, kind, Words.PIECE_KINDS));
    if (count < 1 || !Range.MINISTERS.contains(count)) {
      cells.refuse(column, "Write how many bring it: 1 to " + Range.MINISTERS.most() + ".");
    }
    return Stream.of(new Bringing(role, count, kinds));
  }

  private static List<String> kinds(String text) {
    return Stream.of(text.split("\\+")).map(k -> k.strip().toLowerCase(Locale.ROOT)).toList();
  }

  private static void check(Cells cells, String column, String word, List<String> words) {
    if (!words.contains(word)) {
      cells.refuse(column, "\"%s\" is not one of: %s.".formatted(word, String.join(", ", words)));
    }
  }
}
