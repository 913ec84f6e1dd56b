package vestiary.feed;

import java.time.Instant;
import java.time.ZonedDateTime;

/**
 * One event of a calendar.
 *
 * @param uid the same for ever
 * @param sequence grows with each change
 * @param changed when it was changed last
 * @param busy whether whoever has the calendar is engaged
 * @param description whole sentences; may be empty
 */
public record CalendarEvent(
    String uid,
    int sequence,
    Instant changed,
    ZonedDateTime start,
    ZonedDateTime end,
    String summary,
    String place,
    String description,
    boolean cancelled,
    boolean busy) {

  /** The same with how often and when it has changed. */
  CalendarEvent stamped(int times, Instant last) {
    return new CalendarEvent(
        uid, times, last, start, end, summary, place, description, cancelled, busy);
  }
}
