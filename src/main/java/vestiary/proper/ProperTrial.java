package vestiary.proper;

import java.util.List;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/**
 * Holds the lines of a list against what the cluster has and against the lines before them, as if
 * each had been kept that nothing was wrong with.
 */
public final class ProperTrial {

  private ProperAdmission admission;

  ProperTrial(ProperAdmission admission) {
    this.admission = admission;
  }

  /** What is wrong with the next request; empty if it can be kept. */
  public List<FieldFault> findFaults(SaveProper.Request request) {
    try {
      admission = admission.with(admission.admit(request));
      return List.of();
    } catch (Refused refused) {
      return refused.refusal().faults();
    }
  }
}
