package vestiary.allocation;

import vestiary.calendar.Term;

/**
 * Where the pieces fall short: at one church, where something can be carried there, or in the whole
 * cluster, where nothing but a substitute, another hour or a loan mends it.
 */
public enum Level implements Term {
  LOCAL,
  CLUSTER
}
