package vestiary.exchange;

import java.time.Instant;
import java.time.LocalDateTime;

/**
 * One time that an event of a calendar takes place.
 *
 * @param event which event of the file it is, from 1
 * @param summary its title, shortened
 * @param origin by which it is known again
 * @param sequence how often its calendar has changed it
 * @param start local date and time in the cluster's zone
 * @param minutes length; 0 if the calendar does not say it
 * @param place what it says of where it is
 * @param cancelled whether it does not take place
 */
record CalendarMass(
    int event,
    String summary,
    Origin origin,
    int sequence,
    LocalDateTime start,
    int minutes,
    String place,
    boolean cancelled) {

  /**
   * @param uid of the event (RFC 5545, 3.8.4.7)
   * @param instance when it would be by its rule (3.8.4.4), as {@link Instant} writes it; empty
   *     without a rule
   */
  record Origin(String uid, String instance) {}
}
