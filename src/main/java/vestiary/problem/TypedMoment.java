package vestiary.problem;

import static vestiary.web.Speech.say;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeParseException;

/** When something begins or ends, as people write it: a date, or a date with an hour. */
public final class TypedMoment {

  private static final int FIRST_YEAR = 1900;
  private static final int LAST_YEAR = 2301;

  private TypedMoment() {}

  /**
   * A date means its first moment, or for an end the first of the day after.
   *
   * @param daysAfter 0 for a beginning, 1 for an end
   * @return the moment; the epoch if {@code asked} has noted a fault
   */
  public static Instant read(String field, String text, int daysAfter, ZoneId zone, Asked asked) {
    try {
      ZonedDateTime time =
          text.contains("T")
              ? dateAndTime(text, zone)
              : LocalDate.parse(text).plusDays(daysAfter).atStartOfDay(zone);
      if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
        return time.toInstant();
      }
      asked.fault(field, say("%s %s lies too far away.", field, text));
    } catch (DateTimeParseException e) {
      asked.fault(
          field,
          say("%s \"%s\" is no date; write it as 2026-12-08, or 2026-12-08T18:30.", field, text));
    } catch (DateTimeException beyondAllDates) {
      asked.fault(field, say("%s %s lies too far away.", field, text));
    }
    return Instant.EPOCH;
  }

  private static ZonedDateTime dateAndTime(String text, ZoneId zone) {
    return Asked.hasOffset(text)
        ? OffsetDateTime.parse(text).atZoneSameInstant(zone)
        : LocalDateTime.parse(text).atZone(zone);
  }
}
