package vestiary.cluster;

import java.util.List;
import vestiary.web.Choice;
import vestiary.web.Field;

/**
 * A cluster's name, its clock and the calendar it keeps.
 *
 * @param timeZone an IANA name, for example {@code America/Chicago}
 * @param timeZones known ones, for completion
 * @param languages of the people, as language tags, the usual one first
 * @param calendar general or national
 * @param epiphany on its date or on Sunday
 * @param ascension on Thursday or on Sunday
 * @param corpusChristi on Thursday or on Sunday
 */
public record CalendarFields(
    Field name,
    Field timeZone,
    List<String> timeZones,
    Field languages,
    Choice calendar,
    Choice epiphany,
    Choice ascension,
    Choice corpusChristi) {

  public CalendarFields {
    timeZones = List.copyOf(timeZones);
  }
}
