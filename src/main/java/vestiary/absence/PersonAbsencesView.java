package vestiary.absence;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;

/**
 * When one person is away.
 *
 * @param name as it is spoken
 * @param own whether whoever looks is that person
 * @param done what was just done; empty if nothing was
 * @param undo where that is taken back; empty if it cannot be
 * @param touched what was just entered comes to; none if nothing was
 * @param problem what keeps the form from being sent; empty if nothing does
 * @param action where the forms are sent
 */
record PersonAbsencesView(
    Frame frame,
    String name,
    boolean own,
    String done,
    String undo,
    List<Touching> touched,
    String problem,
    List<Spell> absences,
    String action,
    Form form,
    List<Link> turn) {

  PersonAbsencesView {
    touched = List.copyOf(touched);
    absences = List.copyOf(absences);
    turn = List.copyOf(turn);
  }

  /** What stands in both forms. */
  record Form(Field from, Field fromTime, Field to, Field toTime, Field reason, Field until) {}

  /**
   * @param sentence how many Masses it touches
   * @param nobodyLeft that nobody is left to celebrate; empty while somebody is
   * @param standIn where it is proposed who celebrates instead; without an address if he celebrates
   *     none of them
   */
  record Touching(String sentence, String nobodyLeft, List<Link> masses, Link standIn) {
    Touching {
      masses = List.copyOf(masses);
    }
  }

  /**
   * One absence.
   *
   * @param reason empty for whoever may not know, and where nobody said
   * @param end where it is ended
   * @param press what does so
   */
  record Spell(String span, String reason, String end, String press) {}
}
