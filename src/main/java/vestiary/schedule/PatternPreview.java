package vestiary.schedule;

import java.util.List;
import vestiary.web.Celebrated;

/**
 * The next Masses of a pattern that is being typed.
 *
 * @param sentence the pattern in plain words, or why there is nothing to show yet
 * @param count for example "52 Masses in the twelve months from 29 November 2026."; may be empty
 * @param dates the first of them
 */
public record PatternPreview(String sentence, String count, List<Dated> dates) {

  public PatternPreview {
    dates = List.copyOf(dates);
  }

  /**
   * @param date for example "Sunday 29 November 2026"
   * @param time 24 hours
   */
  public record Dated(String date, String time, Celebrated celebration) {}
}
