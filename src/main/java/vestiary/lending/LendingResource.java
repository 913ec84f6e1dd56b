package vestiary.lending;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** What is lent to other clusters and borrowed from them. */
@Path("/api/lendings")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.LEND)
class LendingResource {

  private final ReadLendings lendings;
  private final OfferPieces offer;
  private final AnswerOffer answer;

  LendingResource(ReadLendings lendings, OfferPieces offer, AnswerOffer answer) {
    this.lendings = lendings;
    this.offer = offer;
    this.answer = answer;
  }

  /**
   * What is said besides; every field may be left out but the church of a yes.
   *
   * @param church short name of the borrower's church where the pieces are to lie
   */
  record AnswerBody(String church, String answer) {}

  /** How the pieces came back. */
  record EndingBody(String ending) {}

  @GET
  public List<LendingBody> all() {
    return lendings.all().stream().map(LendingBody::from).toList();
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Offers pieces or sets to the cluster of that word, both days included.")
  public Response offer(OfferPieces.Request body) {
    String id = offer.offer(Asked.body(body)).toString();
    return Response.created(URI.create("/api/lendings/" + id)).entity(one(id)).build();
  }

  @GET
  @Path("/{id}")
  public LendingBody one(@RestPath String id) {
    return LendingBody.from(lendings.get(id));
  }

  @POST
  @Path("/{id}/accept")
  @Consumes(MediaType.APPLICATION_JSON)
  public LendingBody accept(@RestPath String id, AnswerBody body) {
    lendings.get(id);
    Asked.body(body);
    answer.accept(id, body.church(), body.answer());
    return one(id);
  }

  @POST
  @Path("/{id}/decline")
  @Consumes(MediaType.APPLICATION_JSON)
  public LendingBody decline(@RestPath String id, AnswerBody body) {
    answer.decline(id, body == null ? "" : body.answer());
    return one(id);
  }

  @POST
  @Path("/{id}/withdraw")
  public LendingBody withdraw(@RestPath String id) {
    answer.withdraw(id);
    return one(id);
  }

  @POST
  @Path("/{id}/return")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Says that the pieces are back with the lender; either side may.")
  public LendingBody giveBack(@RestPath String id, EndingBody body) {
    answer.giveBack(id, body == null ? "" : body.ending());
    return one(id);
  }
}
