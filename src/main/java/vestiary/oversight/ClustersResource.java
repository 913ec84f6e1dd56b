package vestiary.oversight;

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
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Clusters;
import vestiary.access.CurrentCluster;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** The clusters that somebody has to do with, and who may look into the present one. */
@Path("/api/clusters")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_OVERSEERS)
class ClustersResource {

  private final OpenAnother open;
  private final Overseers overseers;
  private final KnownOverseers known;
  private final Clusters clusters;
  private final CurrentCluster cluster;
  private final CurrentVisitor current;

  ClustersResource(
      OpenAnother open,
      Overseers overseers,
      KnownOverseers known,
      Clusters clusters,
      CurrentCluster cluster,
      CurrentVisitor current) {
    this.open = open;
    this.overseers = overseers;
    this.known = known;
    this.clusters = clusters;
    this.cluster = cluster;
    this.current = current;
  }

  /** A cluster as the API writes it. */
  record ClusterBody(String word, String name) {
    static ClusterBody from(Clusters.Named one) {
      return new ClusterBody(one.word(), one.name());
    }
  }

  /** A cluster to be opened; the link is answered once, to whoever opens it. */
  record OpeningBody(
      String word,
      String name,
      String calendar,
      String timeZone,
      String administrator,
      @Schema(readOnly = true) String link) {}

  /** One who may look in; let in by his code. */
  record OverseerBody(
      @Schema(readOnly = true) String id,
      @Schema(writeOnly = true) String code,
      @Schema(readOnly = true) String name,
      @Schema(readOnly = true) String of) {}

  @GET
  @Operation(
      summary = "The present cluster, then those into which the caller may look as overseer.",
      description = "An overseer names one of them in the header Vestiary-Cluster, by its word.")
  public List<ClusterBody> all() {
    Clusters.Named here = clusters.named(cluster.id());
    return Stream.concat(
            Stream.of(here),
            known.of(current.visitor()).stream()
                .map(KnownOverseers.Place::cluster)
                .filter(one -> !one.id().equals(here.id())))
        .map(ClusterBody::from)
        .toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Needs(Action.OPEN_CLUSTERS)
  public Response open(OpeningBody body) {
    Asked.body(body);
    OpenAnother.Opened opened =
        open.open(
            new OpenAnother.Request(
                body.name(), body.word(), body.calendar(), body.timeZone(), body.administrator()));
    return Response.created(URI.create("/api/clusters"))
        .entity(
            new OpeningBody(
                opened.cluster().word(),
                opened.cluster().name(),
                body.calendar(),
                body.timeZone(),
                body.administrator(),
                opened.link()))
        .build();
  }

  @GET
  @Path("/overseers")
  @Needs(Action.KEEP_OVERSEERS)
  public List<OverseerBody> overseers() {
    return overseers.all().stream()
        .map(one -> new OverseerBody(one.id().toString(), null, one.name(), one.home()))
        .toList();
  }

  @POST
  @Path("/overseers")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response letIn(OverseerBody body) {
    String id = overseers.letIn(Asked.body(body).code()).toString();
    OverseerBody made =
        overseers().stream().filter(one -> one.id().equals(id)).findFirst().orElseThrow();
    return Response.created(URI.create("/api/clusters/overseers/" + id)).entity(made).build();
  }

  @DELETE
  @Path("/overseers/{id}")
  public void takeBack(@RestPath String id) {
    overseers.takeBack(id);
  }
}
