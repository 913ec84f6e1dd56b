package vestiary.people;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;

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
    return TITLES.stream()
        .filter(title -> kept.startsWith(title + " "))
        .findFirst()
        .map(title -> say(title) + kept.substring(title.length()))
        .orElse(kept);
  }
}
