package vestiary.absence;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.people.Absence;
import vestiary.people.Person;

/**
 * A time in which a person is not available, as the API writes it.
 *
 * @param person by short name
 * @param from local, with offset
 * @param to local, with offset, not included; absent until somebody knows
 * @param reason absent for whoever may not know it, and where nobody said
 */
record AbsenceBody(
    String id,
    String person,
    String name,
    String from,
    String to,
    @Schema(description = "told to administrators and pastors alone") String reason) {

  static AbsenceBody from(Absence one, Person person, String reason, ZoneId zone) {
    return new AbsenceBody(
        one.id().toString(),
        person.slug(),
        person.calledName(),
        local(one.from(), zone),
        one.isOpen() ? null : local(one.to(), zone),
        reason);
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }

  /**
   * What was entered, and what it comes to.
   *
   * @param masses ids of those at which the person is named
   */
  record Entered(AbsenceBody absence, List<String> masses, String sentence) {}

  /**
   * What is asked for.
   *
   * @param from a date or a date and time, by the cluster's clock; absent: from now on
   * @param to the last date, or a date and time; absent: until further notice
   */
  record Wanted(String from, String to, String reason) {}
}
