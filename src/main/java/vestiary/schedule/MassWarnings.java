package vestiary.schedule;

import java.util.List;

/**
 * What stands in the way of a Mass, for the page that has just saved it. The schedule knows no
 * vestments; whoever does answers.
 */
public interface MassWarnings {

  /** The clashes that concern this Mass, the gravest first; empty if nothing does. */
  List<MassForm.Found> of(DatedMass mass);
}
