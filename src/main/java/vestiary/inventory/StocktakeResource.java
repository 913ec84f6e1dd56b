package vestiary.inventory;

import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
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
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.vesting.ChurchId;

/** Stocktakes: begun, ticked line by line, settled, closed. */
@Path("/api/stocktakes")
@Produces(MediaType.APPLICATION_JSON)
@Needs(Action.KEEP_VESTMENTS)
class StocktakeResource {

  private final BeginStocktake begin;
  private final TakeStock stock;
  private final SettleDifference settle;
  private final CloseStocktake close;
  private final ReadStocktakes stocktakes;
  private final ReadCluster cluster;

  StocktakeResource(
      BeginStocktake begin,
      TakeStock stock,
      SettleDifference settle,
      CloseStocktake close,
      ReadStocktakes stocktakes,
      ReadCluster cluster) {
    this.begin = begin;
    this.stock = stock;
    this.settle = settle;
    this.close = close;
    this.stocktakes = stocktakes;
    this.cluster = cluster;
  }

  /** What is asked to begin one. */
  record BeginBody(String church) {}

  /** What somebody saw; an empty finding takes back what was said. */
  record TickBody(String finding, String note) {}

  /** What is done about a difference. */
  record SettleBody(String how) {}

  /** One piece in a stocktake; no finding while nobody has looked. */
  record LineBody(
      String code,
      String place,
      boolean expected,
      String finding,
      String note,
      boolean difference,
      String settled) {
    static LineBody from(StocktakeLine line) {
      return new LineBody(
          line.code(),
          line.place(),
          line.expected(),
          line.finding().stream().map(Finding::id).findFirst().orElse(null),
          line.note(),
          line.isDifference(),
          line.settled());
    }
  }

  /**
   * A stocktake as the API writes it.
   *
   * @param church short name
   * @param heldOn date of the inventory, or {@code null} while it is under way
   * @param elsewhere made on paper or in another list
   * @param lines in the order of places; {@code null} in the list of all
   */
  record StocktakeBody(
      String id,
      String church,
      String begunAt,
      String heldOn,
      boolean elsewhere,
      List<LineBody> lines) {}

  @GET
  @Transactional
  public List<StocktakeBody> all() {
    Map<ChurchId, String> slugs = slugs();
    return stocktakes.all().stream().map(one -> body(one, slugs, null)).toList();
  }

  @GET
  @Transactional
  @Path("/{id}")
  public StocktakeBody one(@RestPath String id) {
    Stocktake found = stocktakes.get(id);
    return body(found, slugs(), found.lines().stream().map(LineBody::from).toList());
  }

  @POST
  @Transactional
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Begin a stocktake, or be led to the one that is under way there")
  public Response begin(BeginBody body) {
    Asked asked = new Asked();
    String church = asked.needed("church", Asked.body(body).church(), 40);
    asked.refuseIfFaulty();
    String id = begin.begin(church).toString();
    return Response.created(URI.create("/api/stocktakes/" + id)).entity(one(id)).build();
  }

  @PUT
  @Transactional
  @Path("/{id}/lines/{code}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(summary = "Say what was seen of a piece; the same again changes nothing")
  public StocktakeBody tick(@RestPath String id, @RestPath String code, TickBody body) {
    Asked.body(body);
    stock.tick(id, new TakeStock.Seen(code, body.finding(), body.note()));
    return one(id);
  }

  @POST
  @Transactional
  @Path("/{id}/lines/{code}/settling")
  @Consumes(MediaType.APPLICATION_JSON)
  public StocktakeBody settle(@RestPath String id, @RestPath String code, SettleBody body) {
    settle.settle(id, code, Asked.body(body).how());
    return one(id);
  }

  @POST
  @Transactional
  @Path("/{id}/close")
  public StocktakeBody close(@RestPath String id) {
    close.close(id);
    return one(id);
  }

  private Map<ChurchId, String> slugs() {
    return cluster.churches().stream().collect(Collectors.toMap(Church::id, Church::slug));
  }

  private static StocktakeBody body(
      Stocktake one, Map<ChurchId, String> slugs, List<LineBody> lines) {
    return new StocktakeBody(
        one.id().toString(),
        slugs.get(one.church()),
        one.begunAt().toString(),
        one.heldOn().stream().map(Object::toString).findFirst().orElse(null),
        one.elsewhere(),
        lines);
  }
}
