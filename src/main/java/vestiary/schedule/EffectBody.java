package vestiary.schedule;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** What a change of a pattern does to one Mass, as the API writes it. */
record EffectBody(
    @Schema(description = "moves, changes, goes, comes or stays") String effect,
    @Schema(description = "date for which the pattern has or had it") String date,
    @Schema(description = "id of the Mass; none of one that comes") String mass,
    @Schema(description = "when it begins now; none of one that comes") String start) {

  /** Those Masses with which anything happens, or that stay since somebody touched them. */
  static List<EffectBody> from(List<Effect> effects, ZoneId zone) {
    return effects.stream()
        .filter(effect -> effect.kind() != Effect.Kind.SAME)
        .map(effect -> from(effect, zone))
        .toList();
  }

  private static EffectBody from(Effect effect, ZoneId zone) {
    MassRow mass = effect.mass();
    return new EffectBody(
        effect.kind().name().toLowerCase(Locale.ROOT),
        effect.date().toString(),
        mass == null ? null : mass.id.toString(),
        mass == null
            ? null
            : mass.starts.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
  }
}
