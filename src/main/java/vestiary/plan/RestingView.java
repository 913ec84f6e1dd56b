package vestiary.plan;

import java.util.List;

/**
 * Pieces to be taken home, in words.
 *
 * @param pieces for example "HT-W1 and HT-W2, chasuble and stole"
 * @param before for example "before Sunday 13 December, 07:30"; "when somebody passes" where
 *     nothing waits for them
 * @param codes of the pieces, where it can be said here that they are home again
 */
public record RestingView(
    String pieces, String at, String home, String before, List<String> codes) {

  public RestingView {
    codes = List.copyOf(codes);
  }
}
