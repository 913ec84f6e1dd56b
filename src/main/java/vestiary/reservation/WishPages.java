package vestiary.reservation;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** What is asked for: the question, the answer, the queue. */
@Path(WishPages.ADDRESS)
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SET_ASIDE)
class WishPages {

  static final String ADDRESS = "/reservations/wishes";

  private final WishSheet sheet;
  private final ForMass forMass;
  private final AskForSet ask;
  private final AnswerWish answer;
  private final TellWaiting waiting;

  WishPages(
      WishSheet sheet, ForMass forMass, AskForSet ask, AnswerWish answer, TellWaiting waiting) {
    this.sheet = sheet;
    this.forMass = forMass;
    this.ask = ask;
    this.answer = answer;
    this.waiting = waiting;
  }

  @CheckedTemplate(basePath = "reservation")
  static class Templates {
    private Templates() {}

    static native TemplateInstance wishes(WishesView view);

    static native TemplateInstance ask(WishesView.Form view);
  }

  @GET
  public TemplateInstance all() {
    return Templates.wishes(sheet.all(""));
  }

  @GET
  @Path("/new")
  @Needs(Action.SET_ASIDE)
  public TemplateInstance fresh(@Context UriInfo uri) {
    Entries typed = Entries.of(uri.getQueryParameters());
    return Templates.ask(sheet.form(forMass.offers(typed), typed, ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response ask(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    boolean set = !typed.text("set").isEmpty();
    return FormAnswer.of(
        () -> {
          ask.ask(
              new AskForSet.Request(
                  typed.text("mass"), set, typed.text(set ? "set" : "piece"), typed.text("note")));
          return PageAnswer.seeOther(ADDRESS);
        },
        refusal -> PageAnswer.of(refusal.status(), Templates.wishes(sheet.all(refusal.detail()))));
  }

  @POST
  @Path("/{id}/yes")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response yes(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(id, true, sent);
  }

  @POST
  @Path("/{id}/no")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response no(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(id, false, sent);
  }

  @POST
  @Path("/{id}/withdrawal")
  public Response withdraw(@RestPath String id) {
    ask.withdraw(id);
    return PageAnswer.seeOther(ADDRESS);
  }

  private Response answered(String id, boolean yes, MultivaluedMap<String, String> sent) {
    return FormAnswer.of(
        () -> {
          answer.answer(id, yes, Entries.of(sent).text("answer"));
          waiting.look();
          return PageAnswer.seeOther(ADDRESS);
        },
        refusal -> PageAnswer.of(refusal.status(), Templates.wishes(sheet.all(refusal.detail()))));
  }
}
