package vestiary.merger;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.Parishes;

/** The parishes of the cluster; one is merged into another. */
@Path("/api/parishes")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class ParishesResource {

  private final Parishes parishes;
  private final MergeParishes merge;
  private final Trial trial;

  ParishesResource(Parishes parishes, MergeParishes merge, Trial trial) {
    this.parishes = parishes;
    this.merge = merge;
    this.trial = trial;
  }

  @GET
  @Transactional
  @Operation(summary = "All by name, those that were merged among them")
  public List<MergerBodies.Parish> all() {
    return parishes.all().stream()
        .map(
            one ->
                new MergerBodies.Parish(
                    one.id().toString(),
                    one.name(),
                    one.churches(),
                    one.isMerged() ? one.mergedInto() : null,
                    one.isMerged() ? one.mergedFrom() : null))
        .toList();
  }

  @POST
  @Path("/{id}/merger")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Merges a parish into another, with its churches and goods",
      description =
          "Only the bishop merges parishes (can. 515 §2); this notes it. With dryRun=true nothing is changed.")
  public MergerBodies.Merged merge(
      @RestPath String id,
      @Parameter(description = "true to be told what it would do") @QueryParam("dryRun")
          String dryRun,
      MergerBodies.Merging body) {
    return trial.run(
        dryRun,
        body,
        (wanted, isDone) -> {
          List<String> churches = parishes.get(id).churches();
          int pieces =
              merge.merge(id, wanted.into(), wanted.since(), Objects.toString(wanted.note(), ""));
          return new MergerBodies.Merged(isDone, churches, pieces);
        });
  }
}
