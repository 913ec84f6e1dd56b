package vestiary.inventory;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.FormParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.PageAnswer;

/** A walk through a sacristy with a phone: one plain form a step, so that nothing is lost. */
@Path("/stocktakes")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_VESTMENTS)
class StocktakePage {

  private final BeginStocktake begin;
  private final TakeStock stock;
  private final SettleDifference settle;
  private final CloseStocktake close;
  private final StocktakeSheets sheets;
  private final StocktakeList list;

  StocktakePage(
      BeginStocktake begin,
      TakeStock stock,
      SettleDifference settle,
      CloseStocktake close,
      StocktakeSheets sheets,
      StocktakeList list) {
    this.list = list;
    this.begin = begin;
    this.stock = stock;
    this.settle = settle;
    this.close = close;
    this.sheets = sheets;
  }

  @CheckedTemplate(basePath = "inventory")
  static class Templates {
    private Templates() {}

    static native TemplateInstance stocktakes(StocktakeListView view);

    static native TemplateInstance stocktake(StocktakeView view);
  }

  @GET
  @Transactional
  public TemplateInstance all() {
    return Templates.stocktakes(list.view());
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response begin(@FormParam("church") @DefaultValue("") String church) {
    return PageAnswer.seeOther("/stocktakes/" + begin.begin(church));
  }

  @GET
  @Transactional
  @Path("/{id}")
  public TemplateInstance one(
      @RestPath String id, @QueryParam("ticked") @DefaultValue("") String ticked) {
    return Templates.stocktake(sheets.walk(id, new StocktakeSheets.Note(ticked, "", "")));
  }

  @POST
  @Path("/{id}/ticks")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response tick(
      @RestPath String id,
      @FormParam("code") @DefaultValue("") String code,
      @FormParam("finding") @DefaultValue("") String finding,
      @FormParam("note") @DefaultValue("") String note) {
    return step(id, code, () -> stock.tick(id, new TakeStock.Seen(code, finding, note)));
  }

  @POST
  @Path("/{id}/settlings")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response settle(
      @RestPath String id,
      @FormParam("code") @DefaultValue("") String code,
      @FormParam("how") @DefaultValue("") String how) {
    return step(
        id,
        "",
        () -> {
          settle.settle(id, code, how);
          return "";
        });
  }

  @POST
  @Path("/{id}/close")
  public Response close(@RestPath String id) {
    return step(
        id,
        "",
        () -> {
          close.close(id);
          return "";
        });
  }

  /** Does it and leads back to the walk. */
  private Response step(String id, String typed, Supplier<String> deed) {
    return FormAnswer.of(
        () ->
            PageAnswer.seeOther(
                UriBuilder.fromPath("/stocktakes/{id}")
                    .queryParam("ticked", "{code}")
                    .build(id, deed.get())),
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.stocktake(
                    sheets.walk(id, new StocktakeSheets.Note("", refusal.detail(), typed)))));
  }
}
