package vestiary.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The source of a Qute template, read for what people read in it: text between two tags or
 * sections, the attributes that are shown or spoken, and the words that are given to our own tags.
 * Such a run of text, with the expressions that stand in it, is one key.
 */
final class TemplateText {

  private static final Pattern SHOWN =
      Pattern.compile("\\s(?:title|aria-label|placeholder|alt|data-head|data-say-[a-z-]+)=\"$");
  private static final int LONGEST_ATTRIBUTE = 32;
  private static final Pattern GIVEN = Pattern.compile("(?<=\\s)(label|hint)='([^']*)'");
  private static final Pattern GIVEN_TO_FACT = Pattern.compile("(?<=\\s)(name|value)='([^']*)'");

  /** Sections that hold a name for style sheets or a tag of a language, and no text. */
  private static final Pattern NAMES = Pattern.compile("\\{#(?:insert )?(?:kind|language)}");

  private static final Pattern LETTER = Pattern.compile("\\p{L}");
  private static final Pattern NOT_TEXT = Pattern.compile("\\{[^}]*}|&#?\\w+;");

  private final String source;
  private final Words words;
  private final StringBuilder out = new StringBuilder();
  private final StringBuilder run = new StringBuilder();
  private int at;

  private TemplateText(String source, Words words) {
    this.source = source;
    this.words = words;
  }

  /** The source with both languages in place of each run of text. */
  static String with(String source, Words words) {
    return new TemplateText(source, words).read();
  }

  /** What becomes of a run of text. */
  interface Words {

    /**
     * In the other language; the key itself where there is none.
     *
     * @param key the text with its blanks run together
     */
    String of(String key);

    /** Both as source, of which one is shown. */
    String both(String here, String other);
  }

  private String read() {
    while (at < source.length()) {
      if (source.startsWith("<!--", at)) {
        flush();
        copyThrough("-->");
      } else if (isTag()) {
        flush();
        readTag();
      } else if (isQute()) {
        readQute();
      } else {
        run.append(source.charAt(at++));
      }
    }
    flush();
    return out.toString();
  }

  private boolean isTag() {
    return source.charAt(at) == '<'
        && at + 1 < source.length()
        && (Character.isLetter(source.charAt(at + 1)) || "/!".indexOf(source.charAt(at + 1)) >= 0);
  }

  private boolean isQute() {
    return source.charAt(at) == '{'
        && (at == 0 || source.charAt(at - 1) != '\\')
        && at + 1 < source.length()
        && !Character.isWhitespace(source.charAt(at + 1));
  }

  /** An expression belongs to the text; a section, a comment or a declaration ends it. */
  private void readQute() {
    String part = qute();
    if ("#/@!|".indexOf(part.charAt(1)) < 0) {
      run.append(part);
      return;
    }
    flush();
    out.append(part.startsWith("{#") ? given(part) : part);
    if (NAMES.matcher(part).matches()) {
      int end = source.indexOf("{/", at);
      out.append(source, at, end);
      at = end;
    }
  }

  private String given(String section) {
    Pattern pattern = section.startsWith("{#fact ") ? GIVEN_TO_FACT : GIVEN;
    String other =
        pattern
            .matcher(section)
            .replaceAll(
                found ->
                    Matcher.quoteReplacement(
                        found.group(1) + "='" + words.of(found.group(2)) + "'"));
    if (!pattern.matcher(section).find()) {
      return section;
    }
    if (!section.endsWith("/}")) {
      throw new IllegalStateException("a tag that is given words and has a body: " + section);
    }
    return words.both(section, other);
  }

  private String qute() {
    int start = at;
    if (source.startsWith("{!", at) || source.startsWith("{|", at)) {
      at = source.indexOf(source.charAt(at + 1) + "}", at) + 2;
      return source.substring(start, at);
    }
    char quote = 0;
    char c;
    do {
      c = source.charAt(at++);
      if (quote == 0 && (c == '\'' || c == '"')) {
        quote = c;
      } else if (c == quote) {
        quote = 0;
      }
    } while (c != '}' || quote != 0);
    return source.substring(start, at);
  }

  private void readTag() {
    int start = at;
    while (source.charAt(at) != '>') {
      if (isQute()) {
        out.append(qute());
        continue;
      }
      out.append(source.charAt(at++));
      if (out.charAt(out.length() - 1) == '"') {
        readValue();
      }
    }
    out.append(source.charAt(at++));
    if (source.startsWith("<style", start) || source.startsWith("<script", start)) {
      copyThrough(source.startsWith("<style", start) ? "</style>" : "</script>");
    }
  }

  private void readValue() {
    boolean isShown =
        SHOWN
            .matcher(out)
            .region(Math.max(0, out.length() - LONGEST_ATTRIBUTE), out.length())
            .find();
    while (source.charAt(at) != '"') {
      if (isQute() && isShown) {
        readQute();
      } else if (isQute()) {
        out.append(qute());
      } else {
        (isShown ? run : out).append(source.charAt(at++));
      }
    }
    flush();
    out.append(source.charAt(at++));
  }

  private void copyThrough(String end) {
    int stop = source.indexOf(end, at) + end.length();
    out.append(source, at, stop);
    at = stop;
  }

  private void flush() {
    String text = run.toString();
    run.setLength(0);
    String words = text.strip();
    if (!LETTER.matcher(NOT_TEXT.matcher(words).replaceAll("")).find()) {
      out.append(text);
      return;
    }
    int lead = text.indexOf(words);
    out.append(text, 0, lead)
        .append(this.words.both(words, this.words.of(words.replaceAll("\\s+", " "))))
        .append(text, lead + words.length(), text.length());
  }
}
