package vestiary.web;

import java.util.List;

/**
 * Colours to choose from, each with its ribbon and name; the form sends the colour's id.
 *
 * @param error one whole sentence; empty if nothing is wrong
 */
public record ColourChoice(List<Option> options, String error) {

  public ColourChoice {
    options = List.copyOf(options);
  }

  public record Option(Ribbon ribbon, boolean chosen) {}
}
