package vestiary.schedule;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import vestiary.calendar.Leave;
import vestiary.calendar.MassKind;
import vestiary.calendar.MassOption;
import vestiary.calendar.MassRuling;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.web.NormWords;

/** Which Masses may be said in a church at an hour, before one is entered. */
@Path("/api/rulings")
@Produces(MediaType.APPLICATION_JSON)
class RulingResource {

  private final ReadCluster cluster;
  private final ReadMasses read;

  RulingResource(ReadCluster cluster, ReadMasses read) {
    this.cluster = cluster;
    this.read = read;
  }

  /**
   * What the norms say of one kind of Mass.
   *
   * @param verdict permitted, with-leave or not-permitted
   * @param celebrations what it may be of, the usual one first
   */
  record RulingBody(
      String mass,
      String verdict,
      String sentence,
      String source,
      List<CelebrationBody> celebrations) {
    static RulingBody from(MassRuling ruling) {
      return new RulingBody(
          ruling.kind().id(),
          ruling.permission().verdict().id(),
          NormWords.of(ruling.permission().said()),
          ruling.permission().source(),
          ruling.options().stream().map(CelebrationBody::from).toList());
    }
  }

  /** A celebration with its lawful colours, the usual one first, and the norm. */
  record CelebrationBody(String id, List<String> colours, String reason, String source) {
    static CelebrationBody from(MassOption option) {
      return new CelebrationBody(
          option.celebration().id(),
          option.colours().stream().map(Term::id).toList(),
          NormWords.of(option.why()),
          option.source());
    }
  }

  @GET
  @Transactional
  @Operation(summary = "Every kind of Mass and liturgy, with what the norms say of it then")
  public List<RulingBody> at(
      @QueryParam("church") String slug,
      @QueryParam("start") String start,
      @QueryParam("votiveOf") String votiveOf,
      @QueryParam("leave") String leave) {
    Asked asked = new Asked();
    String named = asked.needed("church", slug, 40);
    Leave recorded = asked.term("leave", leave, Leave.NONE);
    String subject = asked.text("votiveOf", votiveOf);
    ZoneId zone = cluster.cluster().zone();
    LocalDateTime local = StartTime.parse(start, zone, asked).atZone(zone).toLocalDateTime();
    asked.refuseIfFaulty();
    Church church = cluster.getChurch(named);
    return Arrays.stream(MassKind.values())
        .map(kind -> RulingBody.from(read.ruling(church, local, kind.id(), subject, recorded)))
        .toList();
  }
}
