package vestiary.calendar;

import java.util.Objects;

/**
 * A celebration that is not kept on its day.
 *
 * @param reason one sentence: what prevails, and the day it went to if it was transferred
 */
public record Omission(String id, LocalName name, String reason, String source) {

  public Omission {
    Objects.requireNonNull(id);
    Objects.requireNonNull(name);
    Objects.requireNonNull(reason);
    Objects.requireNonNull(source);
  }
}
