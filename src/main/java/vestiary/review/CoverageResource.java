package vestiary.review;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** How a week is covered, and that it was looked at. */
@Path("/api/coverage")
@Produces(MediaType.APPLICATION_JSON)
class CoverageResource {

  private final ReadReview reviews;
  private final SignWeek sign;

  CoverageResource(ReadReview reviews, SignWeek sign) {
    this.reviews = reviews;
    this.sign = sign;
  }

  @GET
  @Transactional
  @Operation(summary = "A week by its number, as in 2026-W49 (ISO 8601)")
  public CoverageBody of(@QueryParam("week") String week) {
    Asked asked = new Asked();
    String number = asked.needed("week", week, 40);
    asked.refuseIfFaulty();
    return CoverageBody.of(reviews.of(WeekAddress.ofNumber(number)));
  }

  /**
   * @param note a word to the others; may be left out
   * @param seen as the week had it when it was looked at; refused with 409 if it reads otherwise by
   *     now; may be left out
   */
  record SignBody(String note, String seen) {}

  @POST
  @Path("/{week}/sign")
  @Needs(Action.SIGN_WEEKS)
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Sign a week as it is")
  public Response sign(@RestPath String week, SignBody body) {
    Asked.body(body);
    Signature signed =
        sign.sign(WeekAddress.ofNumber(week), new SignWeek.Request(body.note(), body.seen(), null));
    return Response.status(Response.Status.CREATED)
        .entity(CoverageBody.SignatureBody.of(signed))
        .build();
  }
}
