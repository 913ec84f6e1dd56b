package vestiary.planning;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.allocation.Shortage;
import vestiary.allocation.remedy.Cost;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;

/**
 * A clash as the API writes it; {@code needed}, {@code available} and what follows speak of pieces
 * and are absent where those play no part.
 */
record ClashBody(
    String id,
    String level,
    String kind,
    String severity,
    String from,
    String to,
    Integer needed,
    Integer available,
    String pieceKind,
    String colour,
    List<String> masses,
    List<String> unservedMasses,
    List<String> pieces,
    List<String> elsewhere,
    ProofBody proof,
    String sentence,
    @Schema(description = "what mends it, best first") List<RemedyBody> remedies) {

  /** One remedy, with its place in the list. */
  record RemedyBody(
      int n,
      String sentence,
      String how,
      @Schema(description = "by how much each number of the plan's score grows") Cost cost,
      @Schema(description = "the same in people's words") String costs,
      List<ChangeValue> changes,
      @Schema(description = "what else it changes") List<String> also,
      @Schema(description = "the norm that allows it") String source,
      @Schema(description = "false for advice, which people must follow themselves")
          boolean applicable,
      @Schema(description = "whether an owner must be asked first") boolean onAsking,
      @Schema(description = "whether a person may be named who takes it") boolean takesName,
      @Schema(description = "send it along to apply this remedy and no other") String fingerprint) {

    static RemedyBody from(OfferedRemedy offered) {
      return new RemedyBody(
          offered.place(),
          offered.sentence(),
          given(offered.how()),
          offered.cost(),
          offered.costs(),
          offered.changes(),
          offered.also(),
          given(offered.source()),
          offered.isApplicable(),
          offered.onAsking(),
          offered.takesName(),
          offered.fingerprint());
    }

    private static String given(String text) {
      return text.isEmpty() ? null : text;
    }
  }

  static ClashBody from(Clash clash, SpanToCheck span, List<OfferedRemedy> offered) {
    ZoneId zone = span.cluster().zone();
    Optional<Shortage> proof = clash.findProof();
    DatedMass last = clash.masses().get(clash.masses().size() - 1);
    return new ClashBody(
        clash.id(),
        proof.map(s -> s.level().id()).orElse(null),
        clash.kind().id(),
        clash.severity().id(),
        local(proof.map(Shortage::from).orElse(clash.first().start().toInstant()), zone),
        local(proof.map(Shortage::to).orElse(last.end().toInstant()), zone),
        proof.map(Shortage::needed).orElse(null),
        proof.map(Shortage::available).orElse(null),
        proof.map(s -> s.pieceKind().id()).orElse(null),
        proof.map(s -> s.colour().id()).orElse(null),
        clash.masses().stream().map(m -> m.id().value().toString()).toList(),
        proof.map(s -> ids(s.unservedMasses())).orElse(List.of()),
        proof.map(s -> codes(s.pieces())).orElse(List.of()),
        proof.map(s -> codes(s.elsewhere())).orElse(List.of()),
        proof.map(s -> ProofBody.from(clash, s)).orElse(null),
        clash.words().sentence(),
        offered.stream().map(RemedyBody::from).toList());
  }

  private static List<String> ids(List<MassId> masses) {
    return masses.stream().map(m -> m.value().toString()).toList();
  }

  private static List<String> codes(List<Piece> pieces) {
    return pieces.stream().map(Piece::code).toList();
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
