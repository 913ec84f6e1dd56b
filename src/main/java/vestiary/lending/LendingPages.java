package vestiary.lending;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** What is lent to other clusters and borrowed from them: the list, the offer, the answer. */
@Path("/lendings")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.LEND)
class LendingPages {

  private final LendingSheets sheets;
  private final OfferSheet form;
  private final OfferPieces offer;
  private final AnswerOffer answer;

  LendingPages(LendingSheets sheets, OfferSheet form, OfferPieces offer, AnswerOffer answer) {
    this.sheets = sheets;
    this.form = form;
    this.offer = offer;
    this.answer = answer;
  }

  @CheckedTemplate(basePath = "lending")
  static class Templates {
    private Templates() {}

    static native TemplateInstance lendings(LendingsView view);

    static native TemplateInstance lending(LendingView view);

    static native TemplateInstance offer(OfferView view);
  }

  @GET
  public TemplateInstance all() {
    return Templates.lendings(sheets.all());
  }

  @GET
  @Path("/new")
  @Needs(Action.LEND)
  public TemplateInstance fresh(@QueryParam("pieces") @DefaultValue("") String pieces) {
    return Templates.offer(form.view(Entries.empty().with("pieces", pieces), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response offer(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> PageAnswer.seeOther(LendingSheets.ADDRESS + "/" + offer.offer(request(typed))),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, OfferSheet.FIELDS);
          return PageAnswer.of(refusal.status(), Templates.offer(form.view(marked, problem)));
        });
  }

  @GET
  @Path("/{id}")
  public TemplateInstance one(@RestPath String id) {
    return Templates.lending(sheets.one(id, Entries.empty(), ""));
  }

  @POST
  @Path("/{id}/accept")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response accept(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(
        id, sent, typed -> answer.accept(id, typed.text("church"), typed.text("answer")));
  }

  @POST
  @Path("/{id}/decline")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response decline(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(id, sent, typed -> answer.decline(id, typed.text("answer")));
  }

  @POST
  @Path("/{id}/withdraw")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdraw(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(id, sent, typed -> answer.withdraw(id));
  }

  @POST
  @Path("/{id}/return")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response giveBack(@RestPath String id, MultivaluedMap<String, String> sent) {
    return answered(id, sent, typed -> answer.giveBack(id, typed.text("ending")));
  }

  private interface Deed {
    void of(Entries typed);
  }

  private Response answered(String id, MultivaluedMap<String, String> sent, Deed deed) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          deed.of(typed);
          return PageAnswer.seeOther(LendingSheets.ADDRESS + "/" + id);
        },
        refusal -> again(id, typed, refusal));
  }

  private Response again(String id, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = FormAnswer.problem(refusal, marked, List.of("church", "answer", "ending"));
    return PageAnswer.of(refusal.status(), Templates.lending(sheets.one(id, marked, problem)));
  }

  private static OfferPieces.Request request(Entries typed) {
    return new OfferPieces.Request(
        typed.text("to"),
        typed.text("from"),
        typed.text("until"),
        typed.all("pieces"),
        typed.isTicked("ownersAsked"),
        typed.text("note"));
  }
}
