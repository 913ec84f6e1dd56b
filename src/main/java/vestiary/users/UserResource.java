package vestiary.users;

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

/** Who may come in, for programs. */
@Path("/api/users")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_USERS)
class UserResource {

  private final ReadUsers read;
  private final SaveUser save;
  private final InviteUser invite;
  private final EndUse end;

  UserResource(ReadUsers read, SaveUser save, InviteUser invite, EndUse end) {
    this.read = read;
    this.save = save;
    this.invite = invite;
    this.end = end;
  }

  @GET
  @Needs(Action.KEEP_USERS)
  public List<UserBody> all() {
    return read.all();
  }

  @GET
  @Path("/{id}")
  @Needs(Action.KEEP_USERS)
  public UserBody one(@RestPath String id) {
    return read.one(id);
  }

  /** Lets somebody in; the link by which they choose a password is answered once. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(UserBody.Entry body) {
    InviteUser.Invited invited = invite.enter(Asked.body(body).toRequest());
    String id = invited.user().toString();
    return Response.created(URI.create("/api/users/" + id))
        .entity(read.one(id).with(invited.link()))
        .build();
  }

  @PUT
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  public UserBody change(@RestPath String id, UserBody.Entry body) {
    save.change(id, Asked.body(body).toRequest());
    return read.one(id);
  }

  /** Lets them in no more. */
  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String id) {
    save.remove(id);
  }

  /** A new link to choose a password by. */
  @POST
  @Path("/{id}/link")
  public UserBody.Link link(@RestPath String id) {
    return new UserBody.Link(invite.again(id).link());
  }

  @DELETE
  @Path("/{id}/sessions")
  public void endSessions(@RestPath String id) {
    end.sessions(id);
  }

  @DELETE
  @Path("/{id}/tokens")
  public void endTokens(@RestPath String id) {
    end.tokens(id);
  }
}
