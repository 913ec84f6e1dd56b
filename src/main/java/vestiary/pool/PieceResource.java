package vestiary.pool;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;

/** Pieces, and when they are in care. */
@Path("/api/pieces")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_VESTMENTS)
class PieceResource {

  private final ReadPool pool;
  private final SavePiece save;
  private final PutInCare care;
  private final EndCare end;
  private final WithdrawPiece withdraw;
  private final ReadCluster cluster;
  private final Clock clock;

  PieceResource(
      ReadPool pool,
      SavePiece save,
      PutInCare care,
      EndCare end,
      WithdrawPiece withdraw,
      ReadCluster cluster,
      Clock clock) {
    this.end = end;
    this.withdraw = withdraw;
    this.pool = pool;
    this.save = save;
    this.care = care;
    this.cluster = cluster;
    this.clock = clock;
  }

  @GET
  @Transactional
  public List<PieceBody> all(@QueryParam("church") String church) {
    ZoneId zone = cluster.cluster().zone();
    Map<ChurchId, String> slugs = slugs();
    if (church != null && !church.isBlank()) {
      cluster.getChurch(church);
    }
    return pool.pieces(clock.instant()).stream()
        .filter(p -> church == null || church.isBlank() || church.equals(slugs.get(p.home())))
        .map(p -> PieceBody.from(p, slugs.get(p.home()), zone))
        .toList();
  }

  @GET
  @Transactional
  @Path("/{code}")
  public PieceBody one(@RestPath String code) {
    PooledPiece piece = pool.get(code);
    return PieceBody.from(piece, slugs().get(piece.home()), cluster.cluster().zone());
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  public Response enter(PieceBody body) {
    String code = save.enter(Asked.body(body).toRequest(body.code()));
    return Response.created(URI.create("/api/pieces/" + code)).entity(one(code)).build();
  }

  @PUT
  @Path("/{code}")
  @Consumes(MediaType.APPLICATION_JSON)
  public PieceBody change(@RestPath String code, PieceBody body) {
    Asked.body(body);
    return one(save.change(code, body.toRequest(body.code() == null ? code : body.code())));
  }

  @DELETE
  @Path("/{code}")
  public void remove(@RestPath String code) {
    save.remove(code);
  }

  @POST
  @Path("/{code}/care")
  @Consumes(MediaType.APPLICATION_JSON)
  public Response putInCare(@RestPath String code, PieceBody.CareBody body) {
    Asked.body(body);
    Care made =
        care.put(code, new PutInCare.Request(body.from(), body.to(), body.reason(), body.kind()));
    return Response.created(URI.create("/api/pieces/%s/care/%s".formatted(code, made.id())))
        .entity(PieceBody.CareBody.from(made, cluster.cluster().zone()))
        .build();
  }

  @DELETE
  @Path("/{code}/care/{id}")
  public void endCare(@RestPath String code, @RestPath String id) {
    end.end(code, id);
  }

  @POST
  @Path("/{code}/withdrawal")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Withdraw a piece from use: it leaves the pool, its page and history stay")
  public PieceBody withdraw(@RestPath String code, PieceBody.WithdrawnBody body) {
    Asked.body(body);
    return one(
        withdraw.withdraw(code, new WithdrawPiece.Request(body.on(), body.reason(), body.to())));
  }

  @DELETE
  @Path("/{code}/withdrawal")
  public void takeBack(@RestPath String code) {
    withdraw.takeBack(code);
  }

  private Map<ChurchId, String> slugs() {
    return cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::slug));
  }
}
