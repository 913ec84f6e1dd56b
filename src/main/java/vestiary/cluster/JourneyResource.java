package vestiary.cluster;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;

/** How long journeys between churches take. */
@Path("/api/journeys")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class JourneyResource {

  private final ReadCluster cluster;
  private final SetJourney set;

  JourneyResource(ReadCluster cluster, SetJourney set) {
    this.cluster = cluster;
    this.set = set;
  }

  /** A journey as the API writes it; estimated ones were guessed from coordinates. */
  record JourneyBody(String from, String to, Integer minutes, Boolean oneWay, Boolean estimated) {}

  @GET
  @Transactional
  public List<JourneyBody> all() {
    Map<ChurchId, String> slugs =
        cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::slug));
    return cluster.journeys().stream()
        .map(
            j ->
                new JourneyBody(
                    slugs.get(j.from()), slugs.get(j.to()), j.minutes(), true, j.isEstimated()))
        .toList();
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  public JourneyBody set(JourneyBody body) {
    Asked.body(body);
    set.set(new SetJourney.Request(body.from(), body.to(), body.minutes(), body.oneWay()));
    return new JourneyBody(
        body.from(), body.to(), body.minutes(), Boolean.TRUE.equals(body.oneWay()), false);
  }
}
