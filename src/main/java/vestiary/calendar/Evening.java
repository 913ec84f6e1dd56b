package vestiary.calendar;

import java.util.Objects;

/**
 * Whether the Mass of this day's evening is already that of the next day.
 *
 * <p>Saturday 15 August 2026 in the United States does not oblige, so its evening is that of the
 * Twentieth Sunday. Source: UNLY 3, 11, 61; Notitiae 20 (1984).
 *
 * @param leeway whether the other day's Mass may be said as well
 */
public record Evening(boolean tomorrow, Leeway leeway, Sentence why, String source) {

  public Evening {
    Objects.requireNonNull(leeway);
    Objects.requireNonNull(why);
    Objects.requireNonNull(source);
  }

  /** Why, in English. */
  public String reason() {
    return why.english();
  }
}
