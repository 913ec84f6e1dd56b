package vestiary.exchange;

import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times of day as people write them: 18:30, 18.30 Uhr, 6:30 pm, 18h30. */
final class ClockWords {

  /** With blanks that do not break, too, since spreadsheets write 6:30 p. m. so. */
  private static final Pattern CLOCK =
      Pattern.compile(
          "(\\d{1,2})(?:\\h?[:.h]\\h?(\\d{2})(?::\\d{2})?)?\\h?(uhr|hrs?|h|a\\.?\\h?m\\.?|p\\.?\\h?m\\.?)?");

  private ClockWords() {}

  /** The time that is meant; empty if it is none. A bare number is none. */
  static Optional<LocalTime> find(String text) {
    Matcher found = CLOCK.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!found.matches() || found.group(2) == null && found.group(3) == null) {
      return Optional.empty();
    }
    int hour = Integer.parseInt(found.group(1));
    int minute = found.group(2) == null ? 0 : Integer.parseInt(found.group(2));
    String half = found.group(3) == null ? "" : found.group(3).replaceAll("[^a-z]", "");
    if (half.equals("am") || half.equals("pm")) {
      if (hour < 1 || hour > 12) {
        return Optional.empty();
      }
      hour = hour % 12 + (half.equals("pm") ? 12 : 0);
    }
    return hour < 24 && minute < 60 ? Optional.of(LocalTime.of(hour, minute)) : Optional.empty();
  }
}
