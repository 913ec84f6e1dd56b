package vestiary.people;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;

/**
 * One person.
 *
 * @param about for example "Priest, from outside"
 * @param visiting whether the person comes from outside the cluster
 * @param ofChild what those responsible for a child read, and no paper shows; else none
 * @param facts what is known, for whoever looks
 * @param away when the person is away from now on; none if nobody knows of any
 * @param heightAction where it is kept how tall the person is; empty where that is not asked
 * @param done what was just done; empty if nothing was
 * @param height in centimetres
 * @param address of this page
 */
record PersonView(
    Frame frame,
    String name,
    String about,
    boolean visiting,
    List<Fact> ofChild,
    List<Fact> facts,
    List<String> away,
    String heightAction,
    String done,
    Field height,
    String address) {

  PersonView {
    ofChild = List.copyOf(ofChild);
    facts = List.copyOf(facts);
    away = List.copyOf(away);
  }

  /** One thing that is known. */
  record Fact(String name, String value) {}
}
