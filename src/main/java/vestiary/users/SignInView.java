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
 * @param demo the demo's people, each let in by one press; none outside it
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
    List<DemoPerson> demo,
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
   * @param role in words, for example "Sacristan of Holy Trinity"
   */
  record DemoPerson(String id, String name, String role) {}
}
