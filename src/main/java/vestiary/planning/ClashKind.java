package vestiary.planning;

import vestiary.calendar.Term;

/** What cannot stand. */
public enum ClashKind implements Term {
  /** More needs at one moment than pieces that could serve them. */
  SHORTAGE,
  /** Enough pieces, and no time for the journey between two Masses. */
  UNREACHABLE,
  /** A colour was chosen that the norms do not allow for this Mass. */
  COLOUR,
  /** The norms do not allow this Mass on that day. */
  NOT_PERMITTED,
  /** The celebrant was removed for good or is away, and nobody is named in his place. */
  NO_CELEBRANT,
  /** Somebody who is named to concelebrate, assist or serve cannot be there. */
  MINISTER,
  /** Somebody is named at two liturgies that he cannot both serve. */
  DOUBLE_BOOKED,
  /** A priest has more Masses on one day than he may or will celebrate. */
  LIMIT,
  /** No alb that is there fits whoever wears one. */
  SIZE
}
