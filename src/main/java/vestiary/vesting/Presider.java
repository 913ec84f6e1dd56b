package vestiary.vesting;

import vestiary.calendar.Term;

/**
 * Who leads a liturgy: it decides the kind of stole, and a bishop makes the liturgy a large one. A
 * deacon leads liturgies that are no Mass.
 *
 * <p>Source: GIRM 340; a bishop's liturgy as a large one: common practice, no source.
 */
public enum Presider implements Term {
  PRIEST,
  BISHOP,
  DEACON
}
