package vestiary.schedule;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** A pattern as the API writes it. */
record PatternBody(
    @Schema(readOnly = true) String id,
    String church,
    @Schema(description = "by RFC 5545, daily or rarer; none where days says them") String rrule,
    String starts,
    String time,
    Integer minutes,
    String mass,
    String celebrant,
    Integer concelebrants,
    Integer deacons,
    List<MinistersValue> ministers,
    String note,
    @Schema(description = "BCP 47, one of the cluster's; the first of them where none is said")
        String language,
    @Schema(
            description =
                "in place of rrule: holy-days, holy-day-eves, sundays-and-holy-days, solemnities, ash-wednesday or all-souls")
        String days,
    @Schema(description = "last date, included") String until,
    @Schema(description = "those alone") List<String> seasons,
    @Schema(description = "those alone, 1 to 12") List<Integer> months,
    Boolean notInTriduum,
    Boolean notOnHolyDays,
    @Schema(description = "always, in-term or in-holidays") String school,
    @Schema(description = "dates left out") List<String> except,
    @Schema(readOnly = true, description = "the same in plain words") String words,
    Integer version) {

  static PatternBody from(PatternRow row, String church, String celebrant, LocalDate today) {
    return new PatternBody(
        row.id.toString(),
        church,
        given(row.rrule),
        row.starts.toString(),
        row.at.toString(),
        row.minutes,
        given(row.kind),
        celebrant,
        row.concelebrants,
        row.deacons,
        row.ministers,
        given(row.note),
        given(row.language),
        given(row.days),
        row.ends == null ? null : row.ends.toString(),
        row.seasons.length == 0 ? null : Arrays.asList(row.seasons),
        row.months.length == 0 ? null : Arrays.asList(row.months),
        row.notInTriduum ? true : null,
        row.notOnHolyDays ? true : null,
        row.school,
        row.except.length == 0 ? null : Stream.of(row.except).map(Objects::toString).toList(),
        PatternWords.of(row, today),
        row.version);
  }

  SavePattern.Request toRequest() {
    return new SavePattern.Request(
        church,
        rrule,
        starts,
        time,
        minutes,
        mass,
        celebrant,
        concelebrants,
        deacons,
        ministers,
        note,
        language,
        new SavePattern.Bounds(
            days, until, seasons, months, notInTriduum, notOnHolyDays, school, except));
  }

  private static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
