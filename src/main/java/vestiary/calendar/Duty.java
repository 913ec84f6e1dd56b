package vestiary.calendar;

import java.util.Objects;

/**
 * Whether the faithful are bound to take part in Mass on a date in a place, and why. It belongs to
 * place and date, never to a celebration alone. Source: canons 1246, 1247.
 */
public record Duty(boolean obliges, Sentence why, String source) {

  public Duty {
    Objects.requireNonNull(why);
    Objects.requireNonNull(source);
  }

  /** Why, in English. */
  public String reason() {
    return why.english();
  }
}
