package vestiary.times;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Objects;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.access.OpenToAll;
import vestiary.problem.Asked;

/** Mass times as they are published, for programs that show them elsewhere. */
@Path("/api/times")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PUBLISH_TIMES)
class TimesResource {

  private final TimesSheet sheet;
  private final PublishTimes publish;

  TimesResource(TimesSheet sheet, PublishTimes publish) {
    this.sheet = sheet;
    this.publish = publish;
  }

  /**
   * @param weeks 1 to 26; absent for 8
   */
  record Wanted(Integer weeks) {}

  @GET
  @Transactional
  @OpenToAll
  @Operation(
      summary = "A week of Mass times as it was published",
      description = "Open to everybody: it holds nothing but what people are told at the door.")
  public TimesBody week(
      @Parameter(description = "Short name of a church; of all without")
          @QueryParam("church")
          @DefaultValue("")
          String church,
      @Parameter(description = "en or es; that of the cluster without")
          @QueryParam("lang")
          @DefaultValue("")
          String language,
      @Parameter(description = "Any date of the week; the present one without")
          @QueryParam("week")
          @DefaultValue("")
          String week,
      @Parameter(description = "Word of the cluster, where the server has several")
          @QueryParam("cluster")
          @DefaultValue("")
          String cluster) {
    TimesAsked asked = new TimesAsked(church, language, cluster, week);
    Optional<Published> found = publish.find();
    return TimesBody.of(sheet.week(asked, found), found);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Transactional
  @Operation(
      summary = "Publishes the schedule as it is now",
      description = "From the Monday of this week. Answers the week that people see now.")
  public TimesBody publish(Wanted body) {
    publish.publish(Objects.toString(Asked.body(body).weeks(), ""));
    return week("", "", "", "");
  }
}
