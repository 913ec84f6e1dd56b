package vestiary.planning;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import vestiary.allocation.Shortage;
import vestiary.problem.Asked;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;

/** What cannot stand. */
@Path("/api/clashes")
@Produces(MediaType.APPLICATION_JSON)
class ClashResource {

  /** Working out more at once would keep the others waiting. */
  private static final int LONGEST_SPAN_DAYS = 100;

  private final CheckClashes check;

  ClashResource(CheckClashes check) {
    this.check = check;
  }

  /**
   * A clash as the API writes it; {@code needed}, {@code available} and what follows speak of
   * pieces and are absent where those play no part.
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
      List<String> remedies) {

    static ClashBody from(Clash clash, ZoneId zone) {
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
          List.of());
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

  @GET
  public List<ClashBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    SpanToCheck span = check.load(dates.first(), dates.last());
    return check.in(span).stream().map(c -> ClashBody.from(c, span.cluster().zone())).toList();
  }
}
