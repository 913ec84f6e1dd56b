package vestiary.device;

import java.util.List;
import vestiary.web.Frame;

/**
 * The question who is holding a shared device.
 *
 * @param problem with the code; empty at first
 * @param action where the held form was sent, and is sent again
 * @param typed what stood in it
 * @param names of those whose name is enough
 * @param codes whether anybody has a code
 * @param church where names are entered
 */
record WhoView(
    Frame frame,
    String problem,
    String action,
    List<Typed> typed,
    List<Name> names,
    boolean codes,
    String church) {

  WhoView {
    typed = List.copyOf(typed);
    names = List.copyOf(names);
  }

  record Typed(String name, String value) {}

  /**
   * @param person id that the press sends
   */
  record Name(String person, String name) {}
}
