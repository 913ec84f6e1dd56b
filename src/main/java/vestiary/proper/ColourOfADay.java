package vestiary.proper;

import static vestiary.web.Speech.say;

import vestiary.calendar.Colour;
import vestiary.problem.Asked;

/**
 * Reads the colour that a day is given. Gold and silver are facts of a vestment, which may be worn
 * for another colour on solemn days; no day has them. Source: GIRM 346, RS 127.
 */
public final class ColourOfADay {

  private ColourOfADay() {}

  public static boolean isOne(Colour colour) {
    return colour != Colour.GOLD && colour != Colour.SILVER;
  }

  /** The colour, or {@code otherwise} if none is given or it cannot be a day's. */
  public static Colour of(String field, String value, Colour otherwise, Asked asked) {
    Colour colour = asked.term(field, value, otherwise);
    if (!isOne(colour)) {
      asked.fault(
          field,
          say(
              "%s \"%s\" is a vestment's colour and no day's; write the colour it stands for, such as white.",
              field, colour.id()));
      return otherwise;
    }
    return colour;
  }
}
