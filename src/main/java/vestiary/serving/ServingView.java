package vestiary.serving;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * Who serves at one Mass.
 *
 * @param church its id
 * @param done what was just done; may be empty
 * @param again who was just taken off and can be put back; one or nobody
 * @param problem what is wrong with what was sent; may be empty
 * @param note that more are named than were entered by number; may be empty
 * @param action where names are sent
 * @param person whom to name, those first who are there, and last who is not available
 */
record ServingView(
    Frame frame,
    String title,
    String church,
    List<Link> turn,
    String done,
    List<Again> again,
    String problem,
    List<Group> groups,
    String note,
    boolean cancelled,
    String action,
    Choice person,
    Choice role) {

  ServingView {
    turn = List.copyOf(turn);
    again = List.copyOf(again);
    groups = List.copyOf(groups);
  }

  /** Somebody with the role that was taken off, as the form sends them. */
  record Again(String person, String role, String name) {}

  /**
   * Those of one role.
   *
   * @param title for example "Servers"
   */
  record Group(String title, List<Named> people) {
    Group {
      people = List.copyOf(people);
    }
  }

  /**
   * @param said why he may not come, for example "not available"; may be empty
   * @param removal where the button that takes him off sends
   */
  record Named(String name, String said, String removal) {}
}
