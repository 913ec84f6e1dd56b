package vestiary.schedule;

import io.quarkus.panache.common.Sort;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
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
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Recurring Mass times. */
@Path("/api/patterns")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_PATTERNS)
class PatternResource {

  private final PatternRows patterns;
  private final SavePattern save;
  private final ChangePattern change;
  private final ReadCluster cluster;
  private final FindPeople people;
  private final Clock clock;

  PatternResource(
      PatternRows patterns,
      SavePattern save,
      ChangePattern change,
      ReadCluster cluster,
      FindPeople people,
      Clock clock) {
    this.patterns = patterns;
    this.save = save;
    this.change = change;
    this.cluster = cluster;
    this.people = people;
    this.clock = clock;
  }

  @GET
  @Transactional
  public List<PatternBody> all() {
    Map<UUID, String> churches =
        cluster.churches().stream().collect(Collectors.toMap(c -> c.id().value(), c -> c.slug()));
    Map<UUID, String> names =
        people.all().stream().collect(Collectors.toMap(Person::id, Person::slug));
    LocalDate today = LocalDate.now(clock.withZone(zone()));
    return patterns.listAll(Sort.by("at").and("id")).stream()
        .map(p -> PatternBody.from(p, churches.get(p.churchId), names.get(p.celebrantId), today))
        .toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public PatternBody one(@RestPath String id) {
    String known = Asked.id("pattern", id).toString();
    return all().stream()
        .filter(p -> p.id().equals(known))
        .findFirst()
        .orElseThrow(() -> new Refused(new Refusal.NotThere("pattern", id)));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(PatternBody body) {
    String id = save.enter(Asked.body(body).toRequest());
    return Response.created(URI.create("/api/patterns/" + id)).entity(one(id)).build();
  }

  /** Changes it and says what that did to its Masses; what was touched by hand stays. */
  @PUT
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  public List<EffectBody> change(
      @RestPath String id,
      @QueryParam("from") @DefaultValue("") String from,
      @QueryParam("takeAlong") boolean takeAlong,
      PatternBody body) {
    return effects(change.change(id, asked(body, from, takeAlong)));
  }

  /** What the same change would do; nothing is changed. */
  @POST
  @Path("/{id}/effects")
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public List<EffectBody> look(
      @RestPath String id,
      @QueryParam("from") @DefaultValue("") String from,
      @QueryParam("takeAlong") boolean takeAlong,
      PatternBody body) {
    return effects(change.look(id, asked(body, from, takeAlong)));
  }

  /** What taking it off would do; nothing is changed. */
  @GET
  @Path("/{id}/removal")
  @Transactional
  public List<EffectBody> lookAtRemoval(@RestPath String id) {
    return effects(change.lookAtRemoval(id));
  }

  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String id) {
    change.remove(id);
  }

  private static ChangePattern.Change asked(PatternBody body, String from, boolean takeAlong) {
    PatternBody given = Asked.body(body);
    return new ChangePattern.Change(given.toRequest(), from, takeAlong, given.version());
  }

  private List<EffectBody> effects(List<Effect> effects) {
    return EffectBody.from(effects, zone());
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }
}
