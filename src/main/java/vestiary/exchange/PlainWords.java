package vestiary.exchange;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** A text as its words alone: small letters and digits without accents, single blanks between. */
final class PlainWords {

  private PlainWords() {}

  static String of(String text) {
    return Normalizer.normalize(text.replace("ß", "ss"), Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replaceAll("(?<=\\p{Ll})(?=\\p{Lu})", " ")
        .toLowerCase(Locale.ROOT)
        .replaceAll("[^\\p{L}\\p{Nd}]+", " ")
        .strip();
  }

  /** Each of the words once, in order. */
  static List<String> all(String text) {
    return Arrays.stream(of(text).split(" ")).filter(word -> !word.isEmpty()).distinct().toList();
  }

  /** The words without blanks between, for names that are written together or apart. */
  static String joined(String text) {
    return all(text).stream().collect(Collectors.joining());
  }
}
