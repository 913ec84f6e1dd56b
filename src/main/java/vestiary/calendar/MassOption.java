package vestiary.calendar;

import java.util.List;
import java.util.Objects;

/**
 * One celebration a Mass may take, in the colours lawful for it.
 *
 * @param colours the usual one first; never empty
 */
public record MassOption(
    Celebration celebration, List<Colour> colours, Sentence why, String source) {

  public MassOption {
    Objects.requireNonNull(celebration);
    colours = List.copyOf(colours);
    if (colours.isEmpty()) throw new IllegalArgumentException("A Mass needs a colour.");
    Objects.requireNonNull(why);
    Objects.requireNonNull(source);
  }

  /** Why, in English. */
  public String reason() {
    return why.english();
  }
}
