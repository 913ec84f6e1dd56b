package vestiary.planning;

import java.util.List;

/**
 * What mends a clash and what was done about it, for its page.
 *
 * @param action where the forms are sent, without the place of the remedy
 * @param offered best first; empty if nothing is to be mended or nothing mends it
 * @param applied what was done and can be undone
 * @param people whose names are proposed where a substitute is accepted by name
 * @param nothing said where a shortage is not mended by anything; else empty
 * @param problem what came of a press that could not be carried out; else empty
 */
public record MendingView(
    String action,
    List<OfferedRemedy> offered,
    List<AppliedRemedy> applied,
    List<String> people,
    String nothing,
    String problem) {

  /** Nothing to mend and nothing done. */
  public static final MendingView NONE =
      new MendingView("", List.of(), List.of(), List.of(), "", "");

  public MendingView {
    offered = List.copyOf(offered);
    applied = List.copyOf(applied);
    people = List.copyOf(people);
  }

  /** Whether somebody can be named in one of the forms. */
  public boolean isNaming() {
    return offered.stream().anyMatch(OfferedRemedy::takesName);
  }
}
