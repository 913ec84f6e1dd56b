package vestiary.schedule;

import java.util.List;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * What a change of a pattern would do, before it is saved.
 *
 * @param title for example "Before it is saved"
 * @param pattern the pattern as it is to be, in plain words
 * @param lead how much is touched, in one sentence
 * @param problem why it must be looked at again; empty if it need not
 * @param groups Masses that move, change, go, come or stay; those without any are left out
 * @param touched which vestments, ministers and holds are touched; empty if none are
 * @param action where the confirmation is sent
 * @param typed what was typed, to be sent with it
 * @param seen what was looked at, so that nothing else is confirmed
 * @param button for example "Save it so"
 * @param back without changing anything
 */
public record EffectsView(
    Frame frame,
    String title,
    String pattern,
    String lead,
    String problem,
    List<Group> groups,
    List<String> touched,
    String action,
    List<Typed> typed,
    String seen,
    String button,
    Link back) {

  public EffectsView {
    groups = List.copyOf(groups);
    touched = List.copyOf(touched);
    typed = List.copyOf(typed);
  }

  /**
   * @param heading for example "Twelve Masses move"
   * @param lines one a Mass, the first of them
   * @param more how many are not shown; empty if all are
   */
  public record Group(String heading, List<Line> lines, String more) {
    public Group {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param mass its words and its page; no address where it is yet to come
   * @param becomes for example "to 11:00"; may be empty
   */
  public record Line(Link mass, String becomes) {}

  public record Typed(String name, String value) {}
}
