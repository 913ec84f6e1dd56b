package vestiary.ordo;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.web.Frames;

/** The ordo of a liturgical year, as people read and print it. */
@Path("/year")
@Produces(MediaType.TEXT_HTML)
class YearPage {

  private final ReadOrdo ordo;
  private final ReadCluster cluster;
  private final Frames frames;
  private final Clock clock;

  YearPage(ReadOrdo ordo, ReadCluster cluster, Frames frames, Clock clock) {
    this.ordo = ordo;
    this.cluster = cluster;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "ordo")
  static class Templates {
    private Templates() {}

    static native TemplateInstance year(OrdoView view);
  }

  @GET
  @Transactional
  public TemplateInstance present(
      @QueryParam("church") String church, @QueryParam("paper") String paper) {
    return year(LiturgicalYear.of(today()), church, paper);
  }

  @GET
  @Transactional
  @Path("/{year}")
  public TemplateInstance year(
      @RestPath String year,
      @QueryParam("church") String church,
      @QueryParam("paper") String paper) {
    return year(LiturgicalYear.parse(year), church, paper);
  }

  private TemplateInstance year(LiturgicalYear year, String church, String paper) {
    Asked asked = new Asked();
    Paper chosen = asked.term("paper", paper, Paper.A4);
    asked.refuseIfFaulty();
    Ordo found = ordo.read(year, church);
    return Templates.year(
        new OrdoSheet(found, chosen, today())
            .view(frames.of("year", OrdoAddress.of(found, chosen).page())));
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }
}
