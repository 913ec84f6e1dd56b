package vestiary.office;

import java.util.List;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Link;
import vestiary.web.Ribbon;

/**
 * The sheet of one Mass.
 *
 * @param isLate whether it should have been sent
 * @param standing how it stands, in a sentence
 * @param facts what the office asks for, as far as it is known
 * @param forms for whoever may fill it in; none for others
 */
record OfficeView(
    Frame frame,
    String done,
    String over,
    String title,
    List<Link> turn,
    boolean isLate,
    String standing,
    Ribbon ribbon,
    List<Fact> facts,
    List<Forms> forms) {

  OfficeView {
    turn = List.copyOf(turn);
    facts = List.copyOf(facts);
    forms = List.copyOf(forms);
  }

  /**
   * @param value a blank line to be filled in by hand where it is empty
   */
  record Fact(String name, String value) {}

  /**
   * @param action where the sheet is sent to be kept
   * @param isSent whether it was noted as sent
   */
  record Forms(
      String action,
      String problem,
      String version,
      boolean isSent,
      Field sentOn,
      Field arrival,
      Field vestingPlace,
      Field parking,
      Field candidates,
      Field company,
      Field brought,
      Field wanted,
      Field note) {}
}
