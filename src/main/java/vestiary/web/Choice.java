package vestiary.web;

import java.util.List;
import java.util.stream.Collectors;

/**
 * One of several, or some of several where the form says so.
 *
 * @param options in the order they are offered
 * @param error one whole sentence; empty if nothing is wrong
 */
public record Choice(List<Option> options, String error) {

  public Choice {
    options = List.copyOf(options);
  }

  /** A choice with nothing wrong. */
  public static Choice of(List<Option> options) {
    return new Choice(options, "");
  }

  /** The texts of what is chosen, with commas between; empty if nothing is. */
  public String chosen() {
    return options.stream()
        .filter(Option::chosen)
        .map(Option::text)
        .collect(Collectors.joining(", "));
  }

  /**
   * @param value what the form sends
   * @param text what the reader sees
   */
  public record Option(String value, String text, boolean chosen) {

    /** An option that is not chosen. */
    public static Option of(String value, String text) {
      return new Option(value, text, false);
    }
  }
}
