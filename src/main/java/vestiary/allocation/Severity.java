package vestiary.allocation;

import vestiary.calendar.Term;

/**
 * How grave a finding is: a need for which nothing lawful is left must be mended; where a carriage
 * or a lawful substitute mends it, somebody is to decide.
 */
public enum Severity implements Term {
  MUST,
  DECIDE
}
