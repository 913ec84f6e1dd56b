package vestiary.inventory;

import static vestiary.web.Speech.say;

import vestiary.web.Speech;

/** How pages say how far a stocktake is. */
final class StocktakeWords {

  private StocktakeWords() {}

  /** For example "Three pieces are to be looked for yet; two differences are to be settled." */
  static String standing(Stocktake stocktake) {
    int left = stocktake.left().size();
    int open = stocktake.open().size();
    if (left == 0 && open == 0) {
      return say("All is looked for and settled.");
    }
    return "%s; %s."
        .formatted(
            Speech.sentence(
                say(
                    "%s %s to be looked for yet",
                    Speech.count(left, "piece"), left == 1 ? say("is") : say("are"))),
            say(
                "%s %s to be settled",
                Speech.count(open, "difference"), open == 1 ? say("is") : say("are")));
  }

  /** For example "in another place: on the rail"; empty while nobody has looked. */
  static String seen(StocktakeLine line) {
    String word = line.finding().stream().map(Finding::words).findFirst().orElse("");
    String said = line.expected() || word.isEmpty() ? word : word + say(", and not at home here");
    return line.note().isEmpty() ? said : said + ": " + line.note();
  }
}
