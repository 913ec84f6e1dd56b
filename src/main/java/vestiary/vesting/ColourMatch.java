package vestiary.vesting;

import java.util.List;
import vestiary.calendar.Colour;

/**
 * How well a piece serves a colour. Gold and silver are a kind of white; on feasts and solemnities
 * they may stand for red and green; never for violet or black, nor for rose, which itself stands
 * for violet.
 *
 * <p>Source: GIRM 346; RS 127; gold as white off feast days: common practice, no source.
 */
public enum ColourMatch {
  PROPER("GIRM 346"),
  FESTIVE("RS 127"),
  CUSTOM("common practice, no source"),
  NONE("GIRM 346; RS 127");

  private final String source;

  ColourMatch(String source) {
    this.source = source;
  }

  /**
   * How a piece serves a colour.
   *
   * @param colours the colours the piece may serve as, the first being what it is; one or more
   * @param wanted the colour asked for
   * @param festive whether the day is a feast or solemnity
   */
  public static ColourMatch of(List<Colour> colours, Colour wanted, boolean festive) {
    if (!mayStandFor(colours, wanted)) {
      return NONE;
    }
    if (colours.contains(wanted)) {
      return PROPER;
    }
    return isPrecious(colours.get(0)) ? standsFor(wanted, festive) : NONE;
  }

  /** RS 127: what is gold or silver never goes in the place of violet or black. */
  public static boolean mayStandFor(List<Colour> colours, Colour wanted) {
    return !isPrecious(colours.get(0)) || !isPenitential(wanted);
  }

  /** Whether it may be worn. */
  public boolean serves() {
    return this != NONE;
  }

  /** The norm behind the answer. */
  public String source() {
    return source;
  }

  private static ColourMatch standsFor(Colour wanted, boolean festive) {
    return switch (wanted) {
      case WHITE -> festive ? FESTIVE : CUSTOM;
      case RED, GREEN -> festive ? FESTIVE : NONE;
      default -> NONE;
    };
  }

  private static boolean isPrecious(Colour colour) {
    return colour == Colour.GOLD || colour == Colour.SILVER;
  }

  private static boolean isPenitential(Colour colour) {
    return colour == Colour.VIOLET || colour == Colour.BLACK || colour == Colour.ROSE;
  }
}
