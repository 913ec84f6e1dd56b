package vestiary.oversight;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * The clusters that somebody has to do with.
 *
 * @param name of the present one
 * @param signIn the whole address by which its people sign in
 * @param word as it is or was typed, to be changed; shown to whoever may
 * @param places where the visitor may look as overseer
 * @param code by which another cluster lets the visitor look in; empty for whoever has no account
 * @param overseers who may look into the present cluster
 * @param newCode what was typed to let in another
 * @param settles whether the visitor may change the word
 * @param keeps whether the visitor may let overseers in
 * @param opens whether the visitor may open another cluster
 */
record ClustersView(
    Frame frame,
    String done,
    String problem,
    String name,
    String signIn,
    Field word,
    List<Place> places,
    String code,
    List<Overseer> overseers,
    Field newCode,
    boolean settles,
    boolean keeps,
    boolean opens) {

  ClustersView {
    places = List.copyOf(places);
    overseers = List.copyOf(overseers);
  }

  /**
   * @param action where the press is sent that leads there; empty where the visitor is now
   */
  record Place(String name, String word, String action) {}

  /**
   * @param about where he comes from
   * @param end where the press is sent that takes his leave back
   */
  record Overseer(String name, String about, String end) {}
}
