package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.List;

/**
 * A proof as a table, where counting two lists is not enough or the lists are long.
 *
 * @param pictureTitle what the picture of needs and pieces is headed; empty if it is left out
 * @param title of the table; empty if there is none
 * @param heads of its columns
 * @param rows each with as many cells as there are heads
 * @param note below the table; may be empty
 */
public record ProofView(
    String pictureTitle, String title, List<String> heads, List<List<String>> rows, String note) {

  /** Both lists are drawn and counted, and nothing more is needed. */
  public static final ProofView COUNTED =
      new ProofView(word("Count the two"), "", List.of(), List.of(), "");

  public ProofView {
    heads = List.copyOf(heads);
    rows = List.copyOf(rows);
  }

  /** In the language of the request, also where it is one of the constants. */
  @Override
  public String pictureTitle() {
    return say(pictureTitle);
  }
}
