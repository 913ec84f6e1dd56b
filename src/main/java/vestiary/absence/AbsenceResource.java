package vestiary.absence;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.cluster.ReadCluster;
import vestiary.people.Absence;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.people.ReadAbsences;
import vestiary.problem.Asked;

/** Who is not available, and when. */
@Path("/api/absences")
@Produces(MediaType.APPLICATION_JSON)
class AbsenceResource {

  private static final int LONGEST_SPAN_DAYS = 400;

  private final ReadAbsences read;
  private final FindPeople people;
  private final ReadCluster cluster;

  AbsenceResource(ReadAbsences read, FindPeople people, ReadCluster cluster) {
    this.read = read;
    this.people = people;
    this.cluster = cluster;
  }

  /** Those that meet these dates, the last included. */
  @GET
  @Transactional
  public List<AbsenceBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span span = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    ZoneId zone = cluster.cluster().zone();
    Map<UUID, Person> known = people.byId();
    List<Absence> found =
        read.between(
            span.first().atStartOfDay(zone).toInstant(),
            span.last().plusDays(1).atStartOfDay(zone).toInstant());
    Map<UUID, String> reasons = read.reasons(found);
    return found.stream()
        .map(one -> AbsenceBody.from(one, known.get(one.person()), reasons.get(one.id()), zone))
        .toList();
  }
}
