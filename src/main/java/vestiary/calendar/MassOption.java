package vestiary.calendar;

import java.util.List;
import java.util.Objects;

/**
 * One celebration a Mass may take, in the colours lawful for it.
 *
 * @param colours the usual one first; never empty
 */
public record MassOption(
    Celebration celebration, List<Colour> colours, String reason, String source) {

  public MassOption {
    Objects.requireNonNull(celebration);
    colours = List.copyOf(colours);
    if (colours.isEmpty()) throw new IllegalArgumentException("A Mass needs a colour.");
    Objects.requireNonNull(reason);
    Objects.requireNonNull(source);
  }
}
