package vestiary.planning;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** What cannot stand, what mends it, and the presses that do and undo it. */
@Path("/api/clashes")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.PLAN)
class ClashResource {

  /** Working out more at once would keep the others waiting. */
  private static final int LONGEST_SPAN_DAYS = 100;

  private static final int LONGEST_SENTENCE = 1_000;

  private final CheckClashes check;
  private final FindClash find;
  private final MendClashes mend;
  private final ObjectMapper json;

  ClashResource(CheckClashes check, FindClash find, MendClashes mend, ObjectMapper json) {
    this.json = json;
    this.check = check;
    this.find = find;
    this.mend = mend;
  }

  @GET
  @Operation(summary = "Clashes with a Mass that starts on these dates, both included")
  public List<ClashBody> between(@QueryParam("from") String from, @QueryParam("to") String to) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(from, to, LONGEST_SPAN_DAYS);
    asked.refuseIfFaulty();
    SpanToCheck span = check.load(dates.first(), dates.last());
    return check.in(span).stream()
        .map(clash -> ClashBody.from(clash, span, mend.offered(clash, span)))
        .toList();
  }

  @GET
  @Path("/{id}")
  @Operation(summary = "One clash, as long as it stands")
  public ClashBody one(@RestPath String id) {
    FindClash.Found found =
        find.find(id).orElseThrow(() -> new Refused(new Refusal.NotThere("clash", id)));
    return ClashBody.from(found.clash(), found.span(), mend.offered(found.clash(), found.span()));
  }

  /**
   * What a press says beside the place of the remedy; all of it may be left out.
   *
   * @param sentence of the remedy that was read; refused with 409 if another stands there by now
   * @param fingerprint the same, shorter
   * @param person who takes the substitute, where one is accepted by name
   */
  record PressBody(String sentence, String fingerprint, String person) {

    MendClashes.Press toPress() {
      Asked asked = new Asked();
      MendClashes.Press press =
          new MendClashes.Press(
              asked.text("fingerprint", fingerprint, LONGEST_SENTENCE),
              asked.text("sentence", sentence, LONGEST_SENTENCE),
              asked.text("person", person, LONGEST_NAME));
      asked.refuseIfFaulty();
      return press;
    }
  }

  /** For a name that is typed. */
  static final int LONGEST_NAME = 200;

  /** What was done. */
  record AppliedBody(String clash, int n, String sentence, String appliedAt, String undo) {}

  @POST
  @Path("/{id}/remedies/{n}")
  @Consumes(MediaType.WILDCARD)
  @Operation(summary = "Apply the nth remedy of a clash; doing it twice changes nothing more")
  @RequestBody(
      required = false,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = PressBody.class)))
  public AppliedBody apply(@RestPath String id, @RestPath String n, String press) {
    AppliedRemedy done = mend.apply(id, n, read(press));
    return new AppliedBody(
        done.clash(),
        done.place(),
        done.sentence(),
        done.at(),
        "/api/clashes/%s/remedies/%d".formatted(done.clash(), done.place()));
  }

  /** Read by hand, since a press without a body has no media type either. */
  private MendClashes.Press read(String press) {
    if (press == null || press.isBlank()) {
      return MendClashes.Press.PLAIN;
    }
    try {
      PressBody said = json.readValue(press, PressBody.class);
      return said == null ? MendClashes.Press.PLAIN : said.toPress();
    } catch (JsonProcessingException noJson) {
      throw new WebApplicationException(noJson, Response.Status.BAD_REQUEST);
    }
  }

  @DELETE
  @Path("/{id}/remedies/{n}")
  @Operation(summary = "Undo a remedy that was applied; doing it twice changes nothing more")
  public void undo(@RestPath String id, @RestPath String n) {
    mend.undo(id, n);
  }
}
