package vestiary.reservation;

import static vestiary.web.Speech.say;

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
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** What one church asks of another, or of an owner. */
@Path("/api/wishes")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SET_ASIDE)
class WishResource {

  private static final int LONGEST_CODE = 200;

  private final ReadWishes read;
  private final AskForSet ask;
  private final AnswerWish answer;
  private final TellWaiting waiting;

  WishResource(ReadWishes read, AskForSet ask, AnswerWish answer, TellWaiting waiting) {
    this.read = read;
    this.ask = ask;
    this.answer = answer;
    this.waiting = waiting;
  }

  @GET
  @Operation(summary = "What is asked for, for Masses that are not over; the first asked first.")
  public List<WishBody> all() {
    return read.all().stream().map(WishBody::from).toList();
  }

  @GET
  @Path("/{id}")
  public WishBody one(@RestPath String id) {
    return WishBody.from(read.get(id));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Asks whoever keeps a set or a piece for it, which is not to be had.")
  public Response ask(WishBody body) {
    UUID id = ask.ask(request(Asked.body(body)));
    return Response.created(URI.create("/api/wishes/" + id)).entity(one(id.toString())).build();
  }

  @POST
  @Path("/{id}/yes")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Gives it, and sets it aside for whoever asked.")
  public WishBody yes(@RestPath String id, WishBody.Answer word) {
    return answered(id, true, word);
  }

  @POST
  @Path("/{id}/no")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Keeps it; whoever asked is still told when it becomes free.")
  public WishBody no(@RestPath String id, WishBody.Answer word) {
    return answered(id, false, word);
  }

  @DELETE
  @Path("/{id}")
  @Operation(summary = "Takes back what was asked and is not granted yet.")
  public void withdraw(@RestPath String id) {
    ask.withdraw(id);
  }

  private WishBody answered(String id, boolean yes, WishBody.Answer word) {
    answer.answer(id, yes, Optional.ofNullable(word).map(WishBody.Answer::answer).orElse(""));
    waiting.look();
    return one(id);
  }

  private static AskForSet.Request request(WishBody body) {
    Asked asked = new Asked();
    String set = asked.text("set", body.set(), LONGEST_CODE);
    String piece = asked.text("piece", body.piece(), LONGEST_CODE);
    String mass = asked.needed("mass", body.mass(), LONGEST_CODE);
    if (!asked.isFaulty() && set.isEmpty() == piece.isEmpty()) {
      asked.fault("set", say("Give either a set or a piece, by its code."));
    }
    asked.refuseIfFaulty();
    return new AskForSet.Request(
        mass,
        !set.isEmpty(),
        set.isEmpty() ? piece : set,
        Optional.ofNullable(body.note()).orElse(""));
  }
}
