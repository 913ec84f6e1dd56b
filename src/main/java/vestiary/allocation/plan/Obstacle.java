package vestiary.allocation.plan;

import vestiary.calendar.Term;

/** Why another piece of the kind is not worn instead. */
public enum Obstacle implements Term {
  /** Its colour is not lawful here, or only as a substitute further down the ladder. */
  COLOUR,
  /** It does not fit the wearer. */
  SIZE,
  /** It never leaves its church. */
  STAYS_HOME,
  /** No journey from where it is is known. */
  NO_JOURNEY,
  /** It is in care or away at that time, or before or after with too little time for the way. */
  AWAY,
  /** Its owner does not give it for this Mass. */
  KEPT_BACK,
  /** A sacristan has set it aside for another Mass about that time. */
  HELD,
  /** Somebody else wears it at that Mass, or at another about that time. */
  WORN,
  /** It could be brought, at the cost of a journey. */
  JOURNEY,
  /** It would do as well; people prefer the other, or have had it before. */
  NONE
}
