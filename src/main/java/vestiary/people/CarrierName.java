package vestiary.people;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;
import java.util.function.BinaryOperator;

/** How whoever drives is called, whom plans keep with an English title. */
public final class CarrierName {

  private static final List<String> TITLES =
      List.of(word("Father"), word("Deacon"), word("Bishop"));

  private CarrierName() {}

  /**
   * The name with its title in the language of whoever reads.
   *
   * @param kept for example {@code Father Ilverton}
   */
  public static String of(String kept) {
    return of(kept, (title, name) -> say(title) + " " + name);
  }

  /**
   * The name as somebody else says it.
   *
   * @param called from the English title and the name without it
   */
  public static String of(String kept, BinaryOperator<String> called) {
    return TITLES.stream()
        .filter(title -> kept.startsWith(title + " "))
        .findFirst()
        .map(title -> called.apply(title, kept.substring(title.length() + 1)))
        .orElse(kept);
  }
}
