package vestiary.vesting;

import vestiary.calendar.Colour;
import vestiary.calendar.Term;

/**
 * One lawful substitute for a vestment that is lacking. Bringing one's own is none: that is a fact
 * of the Mass.
 */
public enum Step implements Term {
  VIOLET_FOR_ROSE("violet, which is always right on this day", "GIRM 346 f"),
  STOLE_OVER_ALB("stole over the alb, without a chasuble", "GIRM 209; RS 124"),
  WHITE_CHASUBLE("a white chasuble, of necessity", "RS 124"),
  DALMATIC_LEFT_OUT("stole over the alb, without a dalmatic", "GIRM 338");

  private final String sentence;
  private final String source;

  Step(String sentence, String source) {
    this.sentence = sentence;
    this.source = source;
  }

  /** What is worn instead, in words that complete "He may wear …". */
  public String sentence() {
    return sentence;
  }

  /** The norm that allows it. */
  public String source() {
    return source;
  }

  /** Whether the piece is left out, so that nothing need stand in for it. */
  public boolean isWithout() {
    return this == STOLE_OVER_ALB || this == DALMATIC_LEFT_OUT;
  }

  /** The colour of the piece that stands in; the given one where the piece is left out. */
  public Colour colourFor(Colour wanted) {
    return switch (this) {
      case VIOLET_FOR_ROSE -> Colour.VIOLET;
      case WHITE_CHASUBLE -> Colour.WHITE;
      case STOLE_OVER_ALB, DALMATIC_LEFT_OUT -> wanted;
    };
  }
}
