package vestiary.assigning;

import java.util.List;
import vestiary.web.Link;

/**
 * Who could take the Masses whose celebrant is away.
 *
 * @param lead how many there are and what becomes of them, in sentences; empty if there are none
 * @param taken each Mass that another can take, in one sentence, with its page
 * @param wanting each Mass that nobody can take, with the page that says why and what can be done
 * @param all what naming all of them at one press sends; empty where nobody can take any
 * @param rites what is no Mass and whose minister is away, with who could lead it, in one sentence
 *     each, with its page
 * @param back page that is shown after the press
 */
public record StandInsView(
    String lead,
    List<Link> taken,
    List<Link> wanting,
    List<String> all,
    List<Link> rites,
    String back) {

  public StandInsView {
    taken = List.copyOf(taken);
    wanting = List.copyOf(wanting);
    all = List.copyOf(all);
    rites = List.copyOf(rites);
  }
}
