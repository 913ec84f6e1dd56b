package vestiary.allocation.plan;

import vestiary.calendar.Term;

/** How the piece that is worn comes to be there. */
public enum Ground implements Term {
  /** A sacristan has set it aside. */
  HELD,
  /** It hangs in that church. */
  AT_HOME,
  /** It was brought for an earlier Mass and has stayed. */
  STILL_THERE,
  /** Somebody who travels that way anyway brings it. */
  RIDES_ALONG,
  /** A journey is made for it. */
  CARRIED
}
