package vestiary.calendar;

import java.time.LocalDate;
import java.util.Objects;

/**
 * That a celebration is kept on another date than its own.
 *
 * <p>In 2024 the Annunciation went from 25 March, Monday of Holy Week, to 8 April.
 *
 * @param why one sentence that says why, without the dates
 */
public record Transfer(
    String celebration, LocalDate from, LocalDate to, Sentence why, String source) {

  public Transfer {
    Objects.requireNonNull(celebration);
    Objects.requireNonNull(from);
    Objects.requireNonNull(to);
    Objects.requireNonNull(why);
    Objects.requireNonNull(source);
  }

  /** Why, in English. */
  public String reason() {
    return why.english();
  }
}
