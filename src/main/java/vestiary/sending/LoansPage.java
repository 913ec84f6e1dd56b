package vestiary.sending;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;

/** The record of loans, and what is out now. */
@Path("/")
@Produces(MediaType.TEXT_HTML)
class LoansPage {

  private final LoansSheet sheet;

  LoansPage(LoansSheet sheet) {
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "sending")
  static class Templates {
    private Templates() {}

    static native TemplateInstance loans(LoansView view);
  }

  /**
   * Every loan between parishes, the latest first.
   *
   * @param open "open" for those alone that are not back
   * @param parish of the owner or the borrower; empty for all
   */
  @GET
  @Path("/loans")
  @Transactional
  public TemplateInstance loans(
      @QueryParam("open") @DefaultValue("") String open,
      @QueryParam("parish") @DefaultValue("") String parish) {
    return Templates.loans(sheet.loans(open.equals("open"), parish));
  }

  /** What is out, church by church, what is overdue first. */
  @GET
  @Path("/out")
  @Transactional
  public TemplateInstance out() {
    return Templates.loans(sheet.out());
  }
}
