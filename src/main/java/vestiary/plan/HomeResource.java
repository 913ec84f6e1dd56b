package vestiary.plan;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.pool.TakeHome;
import vestiary.problem.Asked;

/** What is still to be taken home, and that it was. */
@Path("/api/movements/home")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class HomeResource {

  private final ReadResting resting;
  private final TakeHome home;
  private final ReadCluster cluster;

  HomeResource(ReadResting resting, TakeHome home, ReadCluster cluster) {
    this.resting = resting;
    this.home = home;
    this.cluster = cluster;
  }

  /**
   * What lies away from home when a date is over.
   *
   * @param on the date
   */
  @GET
  @Transactional
  public List<RestingBody> after(@QueryParam("on") String on) {
    Asked asked = new Asked();
    LocalDate date = asked.date("on", on);
    asked.refuseIfFaulty();
    Map<UUID, String> slugs =
        cluster.churches().stream()
            .collect(Collectors.toMap(church -> church.id().value(), church -> church.slug()));
    return resting.after(date).stream().map(one -> body(one, slugs)).toList();
  }

  /** Notes that pieces are home by now; of one that is there already nothing is changed. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public void take(TakeHome.Request request) {
    home.take(Asked.body(request));
  }

  private RestingBody body(ReadResting.Found one, Map<UUID, String> slugs) {
    return new RestingBody(
        one.resting().pieces(),
        slugs.get(one.resting().at()),
        slugs.get(one.resting().home()),
        null,
        one.before()
            .map(moment -> moment.atZone(cluster.cluster().zone()))
            .map(DateTimeFormatter.ISO_OFFSET_DATE_TIME::format)
            .orElse(null));
  }
}
