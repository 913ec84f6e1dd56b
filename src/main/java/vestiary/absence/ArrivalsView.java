package vestiary.absence;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * When one person comes to the Masses of the weeks to come.
 *
 * @param done what was just done; may be empty
 * @param problem what is wrong with what was sent; may be empty
 */
record ArrivalsView(
    Frame frame, String name, String done, String problem, List<Coming> masses, List<Link> turn) {

  ArrivalsView {
    masses = List.copyOf(masses);
    turn = List.copyOf(turn);
  }

  /**
   * One Mass.
   *
   * @param church its id
   * @param field name that sets its fields apart from those of other Masses
   * @param action where its form is sent
   */
  record Coming(
      Link mass, String church, String field, Field arrives, Choice brings, String action) {}
}
