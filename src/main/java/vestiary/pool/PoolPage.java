package vestiary.pool;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.Instant;
import vestiary.cluster.ReadCluster;
import vestiary.web.Frames;

/** All vestments of the cluster: the sums first, then piece by piece. */
@Path("/vestments")
@Produces(MediaType.TEXT_HTML)
class PoolPage {

  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;
  private final WhereItIs where;

  PoolPage(ReadPool pool, ReadCluster cluster, Frames frames, Clock clock, WhereItIs where) {
    this.where = where;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "pool")
  static class Templates {
    private Templates() {}

    static native TemplateInstance pool(PoolView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("colour") @DefaultValue("") String colour,
      @QueryParam("kind") @DefaultValue("") String kind,
      @QueryParam("done") @DefaultValue("") String done) {
    Instant now = clock.instant();
    PoolSift sift = new PoolSift(cluster.churches(), church, colour, kind);
    PoolSheet sheet =
        new PoolSheet(
            pool.pieces(now), pool.setNames(), where.out(), sift, now, cluster.cluster().zone());
    return Templates.pool(
        sheet.view(
            frames.of("vestments", "/vestments"),
            done.equals("removed") ? say("It is taken out of the list.") : ""));
  }
}
