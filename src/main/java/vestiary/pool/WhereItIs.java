package vestiary.pool;

import java.util.List;
import java.util.Map;

/**
 * Says where pieces are and who had them. This room knows no sendings, so the feature that does
 * answers it.
 */
public interface WhereItIs {

  /**
   * Where one piece is now and who had it before, the latest first.
   *
   * @param piece its code
   */
  Told of(String piece);

  /**
   * What is out, by the code of the piece, for example "Out at Saint Anne, due Friday 4 December".
   */
  Map<String, String> out();

  /**
   * Where a piece is, in words.
   *
   * @param now for example "At Holy Trinity, press 2."
   * @param before one sentence for each time that it went out
   */
  record Told(String now, List<String> before) {
    public Told {
      before = List.copyOf(before);
    }
  }
}
