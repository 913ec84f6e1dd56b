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
  DALMATIC_LEFT_OUT("stole over the alb, without a dalmatic", "GIRM 338"),
  OTHER_DRESS("other approved dress, without an alb", "GIRM 339"),
  SURPLICE_FOR_ALB(
      "a surplice over the cassock, without an alb",
      "Holy Communion and Worship of the Eucharist 92; the rituals"),
  ALB_ALONE("an alb that needs neither amice nor cincture", "GIRM 119 and 336"),
  CHASUBLE_FOR_COPE(
      "the chasuble, without a cope",
      "Holy Communion and Worship of the Eucharist 105; Roman Missal, Palm Sunday (from memory)"),
  COPE_LEFT_OUT(
      "stole over alb or surplice, without a cope",
      "the rituals: a cope may be worn (from memory)"),
  RED_VEIL(
      "a red humeral veil, since no colour is named", "Roman Missal, Good Friday 22 (from memory)"),
  WHITE_DALMATIC("a white dalmatic, which a bishop may always wear", "Ceremonial of Bishops 56"),
  CHASUBLE_ALONE("the chasuble, without a dalmatic beneath", "Ceremonial of Bishops 56"),
  VIMPA_LEFT_OUT("alb or other dress, without a vimpa", "common practice, no source"),
  PALL_LEFT_OUT("no pall, where it is not the custom", "Order of Christian Funerals 38");

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
    return switch (this) {
      case VIOLET_FOR_ROSE, WHITE_CHASUBLE, RED_VEIL, WHITE_DALMATIC -> false;
      default -> true;
    };
  }

  /** The colour of the piece that stands in; the given one where the piece is left out. */
  public Colour colourFor(Colour wanted) {
    return switch (this) {
      case VIOLET_FOR_ROSE -> Colour.VIOLET;
      case WHITE_CHASUBLE, WHITE_DALMATIC -> Colour.WHITE;
      case RED_VEIL -> Colour.RED;
      default -> wanted;
    };
  }
}
