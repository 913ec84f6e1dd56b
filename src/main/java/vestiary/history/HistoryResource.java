package vestiary.history;

import static vestiary.web.Speech.say;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.web.Entries;
import vestiary.web.Speech;

/** The history of changes, to be taken out whole. */
@Path("/api")
class HistoryResource {

  private static final int MOST = 20_000;
  private static final String TABLE = "text/csv;charset=UTF-8";

  private final ReadHistory history;
  private final HistorySheet sheet;

  HistoryResource(ReadHistory history, HistorySheet sheet) {
    this.history = history;
    this.sheet = sheet;
  }

  /**
   * A change as the API writes it.
   *
   * @param at ISO 8601, with the offset of the cluster's zone
   * @param device the shared device on which it was made; empty for any other
   */
  record ChangeBody(
      String at, String who, String device, String thing, String deed, List<Change.Field> fields) {

    static ChangeBody of(Change change) {
      return new ChangeBody(
          DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(change.at()),
          change.who(),
          change.device(),
          change.thing(),
          change.deed(),
          change.fields());
    }
  }

  @GET
  @Path("/history")
  @Produces(MediaType.APPLICATION_JSON)
  @Needs(Action.KEEP_RECORD)
  @Operation(
      summary = "Every change, the newest first",
      description = "At most 20,000; what is more is refused, to be asked for by shorter times.")
  @Parameter(
      name = "about",
      in = ParameterIn.QUERY,
      description = "Id of the one thing, person or church that they concern",
      schema = @Schema(type = SchemaType.STRING))
  @Parameter(
      name = "from",
      in = ParameterIn.QUERY,
      description = "First day by the cluster's clock",
      example = "2026-11-01",
      schema = @Schema(type = SchemaType.STRING))
  @Parameter(
      name = "to",
      in = ParameterIn.QUERY,
      description = "Last day, included",
      example = "2026-11-30",
      schema = @Schema(type = SchemaType.STRING))
  @Parameter(
      name = "who",
      in = ParameterIn.QUERY,
      description =
          "Id of a user or a shared device, \"server\" for its token, \"jobs\" for itself",
      schema = @Schema(type = SchemaType.STRING))
  @APIResponse(responseCode = "200", description = "The changes")
  @APIResponse(responseCode = "400", description = "A date that is none, or too many changes")
  @Transactional
  public List<ChangeBody> all(@Context UriInfo uri) {
    return found(uri).stream().map(ChangeBody::of).toList();
  }

  @GET
  @Path("/history.csv")
  @Produces(TABLE)
  @Needs(Action.KEEP_RECORD)
  @Operation(
      summary = "The same as CSV (RFC 4180), a line for each field that was changed",
      description = "Narrowed by the same parameters.")
  @APIResponse(responseCode = "200", description = "The table, its first line the columns")
  @Transactional
  public Response table(@Context UriInfo uri) {
    return Response.ok(new HistoryTable(found(uri)).text(), TABLE)
        .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"history.csv\"")
        .build();
  }

  private List<Change> found(UriInfo uri) {
    Entries asked = Entries.of(uri.getQueryParameters());
    String about = asked.text("about");
    String concern = about.isEmpty() ? "" : Asked.id("change", about).toString();
    // A program reads the same words whoever asks.
    List<Change> found =
        Speech.forTheRecord(() -> history.newest(sheet.sift(concern, asked), 0, MOST + 1));
    if (found.size() > MOST) {
      throw new Refused(
          Refusal.Unfit.of(
              "from", say("There are more than 20,000 changes. Ask for a shorter time.")));
    }
    return found;
  }
}
