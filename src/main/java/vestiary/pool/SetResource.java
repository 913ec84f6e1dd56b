package vestiary.pool;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;

/** Sets: what one minister wears together. */
@Path("/api/sets")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_SETS)
class SetResource {

  private final SaveSet sets;

  SetResource(SaveSet sets) {
    this.sets = sets;
  }

  /** A set as the API writes it; the codes of its pieces are answered only. */
  record SetBody(String code, String name, String suit, List<String> pieces) {
    static SetBody from(SaveSet.VestmentSet set) {
      return new SetBody(
          set.code(), PieceBody.given(set.name()), PieceBody.given(set.suit()), set.pieces());
    }
  }

  @GET
  @Transactional
  public List<SetBody> all() {
    return sets.all().stream().map(SetBody::from).toList();
  }

  @GET
  @Transactional
  @Path("/{code}")
  public SetBody one(@RestPath String code) {
    return SetBody.from(sets.get(code));
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(SetBody body) {
    Asked.body(body);
    String code = sets.enter(body.code(), body.name(), body.suit());
    return Response.created(URI.create("/api/sets/" + code)).entity(one(code)).build();
  }

  @PUT
  @Path("/{code}")
  @Consumes(MediaType.APPLICATION_JSON)
  public SetBody change(@RestPath String code, SetBody body) {
    Asked.body(body);
    return one(sets.change(code, body.code(), body.name(), body.suit()));
  }

  @DELETE
  @Path("/{code}")
  public void remove(@RestPath String code) {
    sets.remove(code);
  }
}
