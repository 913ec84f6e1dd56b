package vestiary.schedule;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.calendar.Term;
import vestiary.people.Person;
import vestiary.web.Speech;

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
    @Schema(description = "concelebrants and deacons who are known by name") List<String> named,
    List<BringsValue> brings,
    @Schema(description = "whether a bishop presides; follows from a celebrant who is one")
        Boolean bishop,
    List<MinistersValue> ministers,
    @Schema(description = "what whoever presides puts on besides: cope, humeral-veil")
        List<String> also,
    Integer setOutMinutes,
    String note,
    String intention,
    @Schema(description = "BCP 47, one of the cluster's; the first of them where none is said")
        String language,
    @Schema(readOnly = true) String celebrationName,
    @Schema(readOnly = true) String permission,
    @Schema(
            readOnly = true,
            description = "which of mass, celebration, colour and bishop were chosen")
        List<String> chosen,
    @Schema(readOnly = true) Boolean cancelled,
    @Schema(
            readOnly = true,
            description = "when its pattern has it, if it is moved, or cancelled and of a pattern")
        String usualStart,
    @Schema(readOnly = true, description = "where its pattern has it, likewise") String usualChurch,
    @Schema(readOnly = true, description = "id of the Mass for whose sake it is cancelled")
        String takenOverBy) {

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
        mass.named().stream().map(Person::slug).toList(),
        mass.brings().stream().map(BringsValue::from).toList(),
        mass.ministers().bishop(),
        mass.ministers().further().stream().map(MinistersValue::from).toList(),
        mass.ministers().also().stream().map(Term::id).sorted().toList(),
        chosen.setOutMinutes() < 0 ? null : chosen.setOutMinutes(),
        given(chosen.note()),
        given(chosen.intention()),
        given(chosen.language()),
        mass.option().celebration().name().in(Speech.localeOr(Locale.ENGLISH)),
        mass.ruling().permission().verdict().id(),
        chosenOf(chosen),
        chosen.cancelled() ? true : null,
        departs(mass) ? mass.usual().start().format(DateTimeFormatter.ISO_OFFSET_DATE_TIME) : null,
        departs(mass) ? mass.usual().church().slug() : null,
        mass.findTakenOver().map(other -> other.mass().value().toString()).orElse(null));
  }

  private static boolean departs(DatedMass mass) {
    return mass.isMoved() || mass.isCancelled() && mass.usual().ofPattern();
  }

  SaveMass.Request toRequest() {
    return toRequest(mass, celebration, colour, bishop);
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
            unlessFollowed("colour", colour, before.colour),
            unlessFollowed("bishop", bishop, before.bishop));
  }

  private <T> T unlessFollowed(String field, T value, T before) {
    return Objects.equals(value, before) && !chosen.contains(field) ? null : value;
  }

  private SaveMass.Request toRequest(
      String kind, String keptCelebration, String wornColour, Boolean saidBishop) {
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
        named,
        brings,
        saidBishop,
        ministers,
        also,
        setOutMinutes,
        note,
        intention,
        language,
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
    if (chosen.bishop()) {
      names.add("bishop");
    }
    return names;
  }

  private static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
