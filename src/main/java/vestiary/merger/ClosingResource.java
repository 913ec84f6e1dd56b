package vestiary.merger;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Objects;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;

/** Closes a church, sends its pieces home elsewhere, opens it again. */
@Path("/api/churches/{slug}/closing")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SETTLE_CLUSTER)
class ClosingResource {

  private final CloseChurch close;
  private final ClosingSheet sheet;
  private final Trial trial;

  ClosingResource(CloseChurch close, ClosingSheet sheet, Trial trial) {
    this.close = close;
    this.sheet = sheet;
    this.trial = trial;
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Closes a church from a date on",
      description = "What was celebrated there stays. With dryRun=true nothing is changed.")
  public MergerBodies.Closed close(
      @RestPath String slug,
      @Parameter(description = "true to be told what it would do") @QueryParam("dryRun")
          String dryRun,
      MergerBodies.Closing body) {
    return trial.run(
        dryRun,
        body,
        (wanted, isDone) -> {
          ClosingSheet.Ahead ahead = sheet.ahead(slug, wanted.from());
          close.close(slug, wanted.from(), Objects.toString(wanted.note(), ""));
          return new MergerBodies.Closed(slug, ahead.from(), isDone, ahead.ends(), ahead.pieces());
        });
  }

  @POST
  @Path("/goods")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      summary = "Gives all pieces that are at home there a home in another church",
      description = "With dryRun=true nothing is changed.")
  public MergerBodies.Moved sendHome(
      @RestPath String slug,
      @Parameter(description = "true to be told what it would do") @QueryParam("dryRun")
          String dryRun,
      MergerBodies.Goods body) {
    return trial.run(
        dryRun,
        body,
        (wanted, isDone) -> new MergerBodies.Moved(isDone, close.sendHome(slug, wanted.to())));
  }

  @DELETE
  @Operation(summary = "Opens it again; its Mass times are to be entered anew")
  public void open(@RestPath String slug) {
    close.open(slug);
  }
}
