package vestiary.schedule;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.calendar.Term;
import vestiary.people.Person;

/**
 * A Mass as the API writes it. What was not chosen follows from the calendar and is answered, too;
 * {@code colours} are the lawful ones, the usual first.
 */
record MassBody(
    @Schema(readOnly = true) String id,
    String church,
    @Schema(examples = "2026-12-08T18:30") String start,
    @Schema(minimum = "5", maximum = "360") Integer minutes,
    String mass,
    String votiveOf,
    String leave,
    String celebration,
    String colour,
    @Schema(readOnly = true) List<String> colours,
    String celebrant,
    Integer concelebrants,
    Integer deacons,
    List<BringsValue> brings,
    Integer setOutMinutes,
    String note,
    String intention,
    @Schema(readOnly = true) String celebrationName,
    @Schema(readOnly = true) String permission,
    @Schema(readOnly = true, description = "which of mass, celebration and colour were chosen")
        List<String> chosen,
    @Schema(readOnly = true) Boolean cancelled) {

  static MassBody from(DatedMass mass) {
    DatedMass.Chosen chosen = mass.chosen();
    return new MassBody(
        mass.id().value().toString(),
        mass.church().slug(),
        mass.start().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME),
        (int) mass.length().toMinutes(),
        mass.kind().id(),
        given(chosen.votiveOf()),
        given(chosen.leave()),
        mass.option().celebration().id(),
        mass.colour().id(),
        mass.option().colours().stream().map(Term::id).toList(),
        mass.findCelebrant().map(Person::slug).orElse(null),
        mass.concelebrants(),
        mass.deacons(),
        mass.brings().stream().map(BringsValue::from).toList(),
        chosen.setOutMinutes() < 0 ? null : chosen.setOutMinutes(),
        given(chosen.note()),
        given(chosen.intention()),
        mass.option().celebration().name().english(),
        mass.ruling().permission().verdict().id(),
        chosenOf(chosen),
        chosen.cancelled() ? true : null);
  }

  SaveMass.Request toRequest() {
    return toRequest(mass, celebration, colour);
  }

  /**
   * What is to become of a Mass. Whoever sends an answer back with something changed sends what
   * followed from the calendar too; it was not chosen, and follows anew.
   */
  SaveMass.Request toRequest(MassBody before) {
    return chosen == null
        ? toRequest()
        : toRequest(
            unlessFollowed("mass", mass, before.mass),
            unlessFollowed("celebration", celebration, before.celebration),
            unlessFollowed("colour", colour, before.colour));
  }

  private String unlessFollowed(String field, String value, String before) {
    return Objects.equals(value, before) && !chosen.contains(field) ? null : value;
  }

  private SaveMass.Request toRequest(String kind, String keptCelebration, String wornColour) {
    return new SaveMass.Request(
        church,
        start,
        minutes,
        kind,
        votiveOf,
        leave,
        keptCelebration,
        wornColour,
        celebrant,
        concelebrants,
        deacons,
        brings,
        setOutMinutes,
        note,
        intention,
        null);
  }

  private static List<String> chosenOf(DatedMass.Chosen chosen) {
    List<String> names = new ArrayList<>();
    if (!chosen.kind().isEmpty()) {
      names.add("mass");
    }
    if (!chosen.celebration().isEmpty()) {
      names.add("celebration");
    }
    if (!chosen.colour().isEmpty()) {
      names.add("colour");
    }
    return names;
  }

  private static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
