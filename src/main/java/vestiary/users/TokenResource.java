package vestiary.users;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.access.Secret;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;

/** The tokens of whoever asks, for programs. */
@Path("/api/tokens")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_OWN_ACCOUNT)
class TokenResource {

  private final Tokens tokens;
  private final TokenRows rows;
  private final OwnAccount own;
  private final ReadCluster cluster;
  private final Clock clock;

  TokenResource(Tokens tokens, TokenRows rows, OwnAccount own, ReadCluster cluster, Clock clock) {
    this.tokens = tokens;
    this.rows = rows;
    this.own = own;
    this.cluster = cluster;
    this.clock = clock;
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_OWN_ACCOUNT)
  public List<TokenBody> all() {
    ZoneId zone = cluster.cluster().zone();
    return rows.of(own.id()).stream().map(row -> TokenBody.from(row, zone)).toList();
  }

  /** Makes one, which is answered once. */
  @POST
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  public Response make(TokenBody.Entry body) {
    Secret made = tokens.make(own.id(), Asked.body(body).toRequest());
    TokenRow row = rows.findGood(made.fingerprint(), false, clock.instant()).orElseThrow();
    return Response.created(URI.create("/api/tokens/" + row.id))
        .entity(TokenBody.from(row, cluster.cluster().zone()).with(made.text()))
        .build();
  }

  @DELETE
  @Path("/{id}")
  public void end(@RestPath String id) {
    tokens.end(own.id(), id);
  }
}
