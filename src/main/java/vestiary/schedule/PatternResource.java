package vestiary.schedule;

import io.quarkus.panache.common.Sort;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Asked;

/** Recurring Mass times. */
@Path("/api/patterns")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_PATTERNS)
class PatternResource {

  private final PatternRows patterns;
  private final SavePattern save;
  private final ReadCluster cluster;
  private final FindPeople people;

  PatternResource(PatternRows patterns, SavePattern save, ReadCluster cluster, FindPeople people) {
    this.patterns = patterns;
    this.save = save;
    this.cluster = cluster;
    this.people = people;
  }

  /** A pattern as the API writes it. */
  record PatternBody(
      String id,
      String church,
      String rrule,
      String starts,
      String time,
      Integer minutes,
      String mass,
      String celebrant,
      Integer concelebrants,
      Integer deacons,
      List<MinistersValue> ministers,
      String note) {

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
          note);
    }
  }

  @GET
  @Transactional
  public List<PatternBody> all() {
    Map<UUID, String> churches =
        cluster.churches().stream().collect(Collectors.toMap(c -> c.id().value(), c -> c.slug()));
    Map<UUID, String> names =
        people.all().stream().collect(Collectors.toMap(Person::id, Person::slug));
    return patterns.listAll(Sort.by("at").and("id")).stream()
        .map(p -> body(p, churches.get(p.churchId), names.get(p.celebrantId)))
        .toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(PatternBody body) {
    String id = save.enter(Asked.body(body).toRequest());
    PatternBody made = all().stream().filter(p -> p.id().equals(id)).findFirst().orElseThrow();
    return Response.created(URI.create("/api/patterns/" + id)).entity(made).build();
  }

  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String id) {
    save.remove(id);
  }

  private static PatternBody body(PatternRow row, String church, String celebrant) {
    return new PatternBody(
        row.id.toString(),
        church,
        row.rrule,
        row.starts.toString(),
        row.at.toString(),
        row.minutes,
        row.kind.isEmpty() ? null : row.kind,
        celebrant,
        row.concelebrants,
        row.deacons,
        row.ministers,
        row.note.isEmpty() ? null : row.note);
  }
}
