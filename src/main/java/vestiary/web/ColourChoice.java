package vestiary.web;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Colours to choose from, each with its ribbon and name; the form sends the colour's id.
 *
 * @param error one whole sentence; empty if nothing is wrong
 */
public record ColourChoice(List<Option> options, String error) {

  public ColourChoice {
    options = List.copyOf(options);
  }

  /** The names of what is ticked, with commas between; empty if nothing is. */
  public String chosen() {
    return options.stream()
        .filter(Option::chosen)
        .map(o -> o.ribbon().name())
        .collect(Collectors.joining(", "));
  }

  public record Option(Ribbon ribbon, boolean chosen) {}
}
