package vestiary.inventory;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * A walk through a sacristy: what is left to look for in the order of places, and what was seen.
 *
 * @param id of the church
 * @param address of the stocktake; forms are sent below it
 * @param slug short name of the church
 * @param done what was just ticked, in a sentence; may be empty
 * @param problem what kept something from being done; may be empty
 * @param undo code of what was just ticked; empty if there is nothing to take back
 * @param lead how far it is, in a sentence
 * @param code as it was typed or scanned
 * @param places in order, with what is left there
 * @param differences open ones first
 * @param seen all that was looked for and is as it should be
 * @param closed whether it is closed
 * @param ready whether it can be closed
 */
record StocktakeView(
    Frame frame,
    String id,
    String address,
    String church,
    String slug,
    String done,
    String problem,
    String undo,
    String lead,
    Field code,
    List<Place> places,
    List<Difference> differences,
    List<Line> seen,
    boolean closed,
    boolean ready) {

  StocktakeView {
    places = List.copyOf(places);
    differences = List.copyOf(differences);
    seen = List.copyOf(seen);
  }

  /**
   * @param name for example "Press 2, second drawer"
   */
  record Place(String name, List<Line> lines) {
    Place {
      lines = List.copyOf(lines);
    }
  }

  /**
   * @param what for example "Chasuble, white"
   * @param said what was seen; empty while nobody has looked
   */
  record Line(String code, String what, String said) {}

  /**
   * @param settled what was done about it; empty while nothing was
   * @param ways what can be done, the usual first; none once something was
   */
  record Difference(String code, String what, String said, String settled, List<Way> ways) {
    Difference {
      ways = List.copyOf(ways);
    }
  }

  record Way(String id, String words) {}
}
