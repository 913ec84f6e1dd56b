package vestiary.vesting;

import java.util.Objects;
import vestiary.calendar.Colour;

/**
 * The colour a Mass is celebrated in, after every choice.
 *
 * @param colour the chosen colour
 * @param roseDay whether it is one of the two Sundays on which rose is worn and may yield to violet
 *     (GIRM 346 f)
 * @param festive whether it is a feast or solemnity, when gold and silver may stand for red or
 *     green (RS 127)
 */
public record MassColour(Colour colour, boolean roseDay, boolean festive) {

  public MassColour {
    Objects.requireNonNull(colour, "colour");
  }
}
