package vestiary.proper;

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
import java.util.Map;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;

/** What the churches keep beside the calendar of their country. */
@Path("/api/propers")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.ENTER_PROPERS)
class ProperResource {

  private final ReadPropers propers;
  private final SaveProper save;
  private final ChurchesToBind churches;

  ProperResource(ReadPropers propers, SaveProper save, ChurchesToBind churches) {
    this.propers = propers;
    this.save = save;
    this.churches = churches;
  }

  @GET
  @Transactional
  public List<ProperBody> all() {
    Map<ChurchId, String> slugs = slugs();
    return propers.all().stream().map(proper -> ProperBody.from(proper, slugs)).toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public ProperBody one(@RestPath String id) {
    return ProperBody.from(propers.get(id), slugs());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(ProperBody body) {
    String id = save.enter(Asked.body(body).toRequest());
    return Response.created(URI.create("/api/propers/" + id)).entity(one(id)).build();
  }

  @PUT
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_JSON)
  public ProperBody change(@RestPath String id, ProperBody body) {
    save.change(id, Asked.body(body).toRequest());
    return one(id);
  }

  @DELETE
  @Path("/{id}")
  public void remove(@RestPath String id) {
    save.remove(id, null);
  }

  private Map<ChurchId, String> slugs() {
    return churches.titled().stream()
        .collect(Collectors.toMap(TitledChurch::id, TitledChurch::slug));
  }
}
