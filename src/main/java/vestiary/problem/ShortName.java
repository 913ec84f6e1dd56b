package vestiary.problem;

import java.text.Normalizer;
import java.util.Locale;

/** The name by which addresses and lists know a thing: small letters, digits, single hyphens. */
public final class ShortName {

  private static final String FORM = "[a-z0-9]+(-[a-z0-9]+)*";

  private ShortName() {}

  public static boolean isWellFormed(String text) {
    return text.matches(FORM);
  }

  /**
   * Made of a name by leaving accents and signs away.
   *
   * @param kind stands for the name, with a number, where nothing of it is left
   * @param longest in characters, 1 or more
   */
  public static String of(String name, String kind, int longest) {
    String plain =
        Normalizer.normalize(name, Normalizer.Form.NFD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-");
    String cut = plain.substring(0, Math.min(plain.length(), longest)).replaceAll("^-|-$", "");
    return cut.isEmpty() ? kind + "-" + Integer.toHexString(name.hashCode()) : cut;
  }
}
