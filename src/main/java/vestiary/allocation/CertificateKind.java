package vestiary.allocation;

import vestiary.calendar.Term;

/** How a shortage is shown, the easiest to follow first. */
public enum CertificateKind implements Term {
  ALL_CLASH,
  CHAINS,
  FORCED_CHOICES,
  EXHAUSTION,
  /** Not shown at all: what was to show it did not hold when it was checked again. */
  UNPROVEN
}
