package vestiary.inventory;

import static vestiary.web.Speech.say;

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
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.LocalDate;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Field;
import vestiary.web.PageAnswer;

/** The inventories: how old they are, and each to be printed, signed and taken along. */
@Path("/inventories")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_VESTMENTS)
class InventoryPage {

  private static final String TABLE = "text/csv;charset=UTF-8";

  private final InventorySheets sheets;
  private final ReadInventories inventories;
  private final NoteInventory note;
  private final ValuePiece values;
  private final CurrentVisitor visitor;

  InventoryPage(
      InventorySheets sheets,
      ReadInventories inventories,
      NoteInventory note,
      ValuePiece values,
      CurrentVisitor visitor) {
    this.sheets = sheets;
    this.inventories = inventories;
    this.note = note;
    this.values = values;
    this.visitor = visitor;
  }

  @CheckedTemplate(basePath = "inventory")
  static class Templates {
    private Templates() {}

    static native TemplateInstance inventories(InventoryListView view);

    static native TemplateInstance inventory(InventoryView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.inventories(sheets.list(done.equals("noted") ? say("It is noted.") : ""));
  }

  @GET
  @Transactional
  @Path("/{church}")
  public TemplateInstance one(@RestPath String church) {
    return Templates.inventory(sheets.sheet(church, Field.empty()));
  }

  @GET
  @Transactional
  @Path("/{church}.csv")
  @Produces(TABLE)
  public Response table(@RestPath String church) {
    ReadInventories.Inventory inventory = inventories.get(church);
    boolean valued = visitor.visitor().may(Action.SEE_VALUES);
    Map<String, Valuation> worth = valued ? values.newest() : Map.of();
    return Response.ok(new InventoryTable(inventory, valued, worth).text(), TABLE)
        .header(
            HttpHeaders.CONTENT_DISPOSITION,
            "attachment; filename=\"inventory-%s.csv\"".formatted(inventory.church().slug()))
        .build();
  }

  @POST
  @Path("/{church}/earlier")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response earlier(
      @RestPath String church, @FormParam("date") @DefaultValue("") String date) {
    return FormAnswer.of(
        () -> {
          Asked asked = new Asked();
          LocalDate day = asked.date("date", date);
          asked.refuseIfFaulty();
          note.heldElsewhere(church, day);
          return PageAnswer.seeOther("/inventories?done=noted");
        },
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.inventory(sheets.sheet(church, new Field(date, refusal.detail())))));
  }
}
