package vestiary.onemore;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.setout.ReadSetOut;

/** Those who come to a Mass unexpected. */
@Path("/api/masses/{id}/one-more")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.SET_OUT)
class OneMoreResource {

  private final FindWays find;
  private final TakeOneMore take;
  private final ReadSetOut setOut;

  OneMoreResource(FindWays find, TakeOneMore take, ReadSetOut setOut) {
    this.find = find;
    this.take = take;
    this.setOut = setOut;
  }

  /**
   * A way to vest one more.
   *
   * @param way {@code colour}, a step of the ladder, or {@code own}
   * @param pieces codes, outermost first
   * @param source the norm that lets him take a step; empty where he takes none
   */
  record WayBody(String way, List<String> pieces, String source) {
    static WayBody of(Way way) {
      return new WayBody(way.id(), way.codes(), WayWords.source(way));
    }
  }

  /**
   * Somebody who was added.
   *
   * @param own whether he came with vestments of his own
   */
  record AddedBody(String id, String role, boolean own, List<String> pieces, List<String> steps) {
    static AddedBody of(OneMoreRow row) {
      return new AddedBody(
          row.id.toString(),
          row.role,
          row.own,
          List.of(row.pieces),
          row.steps.stream().map(StepValue::step).toList());
    }
  }

  /**
   * @param ways the nearest to the norms first
   * @param added the latest first
   */
  record OneMoreBody(List<WayBody> ways, List<AddedBody> added) {}

  @GET
  @Transactional
  public OneMoreBody all(
      @RestPath String id, @QueryParam("role") String role, @QueryParam("height") Integer height) {
    TakeOneMore.Wish wish = TakeOneMore.read(new TakeOneMore.Request(role, "", List.of(), height));
    return new OneMoreBody(
        find.find(id, wish.role(), wish.albs()).ways().stream().map(WayBody::of).toList(),
        take.taken(setOut.standing(id)).stream().map(AddedBody::of).toList());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response add(@RestPath String id, TakeOneMore.Request body) {
    return Response.status(Response.Status.CREATED)
        .entity(AddedBody.of(take.take(id, Asked.body(body))))
        .build();
  }

  @DELETE
  @Path("/{person}")
  public void undo(@RestPath String id, @RestPath String person) {
    take.undo(id, person);
  }
}
