package vestiary.users;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * The page where people come in.
 *
 * @param problem over the whole form; empty if nothing is wrong
 * @param back where to go afterwards, an address of this server
 * @param stays whether the session is to outlast the browser
 * @param word that of the cluster whose sign-in page it is; empty for the one it opens with
 * @param asksWord whether people may have to say which cluster is theirs
 * @param action where name and password are sent
 * @param demo the demo's clusters with their people, each let in by one press; none outside it
 * @param begun whether anybody could come in at all
 * @param origin of the server, by which alone the keys of devices are good
 * @param outside the way to another service to sign in by, under its name; nameless without one
 * @param typed what was typed into another form before, carried along; none usually
 */
record SignInView(
    Frame frame,
    String problem,
    Field login,
    Field password,
    boolean stays,
    String back,
    String word,
    boolean asksWord,
    String action,
    List<DemoCluster> demo,
    boolean begun,
    String origin,
    Link outside,
    List<Typed> typed) {

  SignInView {
    demo = List.copyOf(demo);
    typed = List.copyOf(typed);
  }

  /** A field that somebody filled in before they signed in, by the name it is carried under. */
  record Typed(String name, String value) {}

  /**
   * @param action where a press is sent
   */
  record DemoCluster(String name, String action, List<DemoPerson> people) {
    DemoCluster {
      people = List.copyOf(people);
    }
  }

  /**
   * @param role in words, for example "Sacristan of Holy Trinity"
   */
  record DemoPerson(String id, String name, String role) {}
}
