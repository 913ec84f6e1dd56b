package vestiary.calendar;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/**
 * A celebration that is not kept on its day.
 *
 * @param keptOn the date it went to; empty if it is left out for the year
 * @param why one sentence: what prevails, and the day it went to if it was transferred
 */
public record Omission(
    String id, LocalName name, List<LocalDate> keptOn, Sentence why, String source) {

  public Omission {
    Objects.requireNonNull(id);
    Objects.requireNonNull(name);
    keptOn = List.copyOf(keptOn);
    Objects.requireNonNull(why);
    Objects.requireNonNull(source);
  }

  /** Whether it is kept on another date instead. */
  public boolean isKeptElsewhere() {
    return !keptOn.isEmpty();
  }

  /** Why, in English. */
  public String reason() {
    return why.english();
  }
}
