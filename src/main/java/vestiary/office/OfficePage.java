package vestiary.office;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
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
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** The sheet for the bishop's office, filled in, printed and noted as sent. */
@Path("/masses/{id}/office")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PUBLISH_TIMES)
class OfficePage {

  private static final List<String> FIELDS =
      List.of(
          "arrival",
          "vestingPlace",
          "parking",
          "candidates",
          "company",
          "brought",
          "wanted",
          "note",
          "sentOn");

  private static final Map<String, String> DONE =
      Map.of(
          "kept", Speech.word("Kept."),
          "sent", Speech.word("Noted as sent."),
          "not-sent", Speech.word("It counts as not sent."));

  private final OfficeSheet sheet;
  private final KeepOfficeSheet keep;

  OfficePage(OfficeSheet sheet, KeepOfficeSheet keep) {
    this.sheet = sheet;
    this.keep = keep;
  }

  @CheckedTemplate(basePath = "office")
  static class Templates {
    private Templates() {}

    static native TemplateInstance office(OfficeView view);
  }

  @GET
  @Transactional
  public TemplateInstance one(
      @RestPath String id, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.office(
        sheet.view(id, Speech.say(DONE.getOrDefault(done, "")), Entries.empty(), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response keep(@RestPath String id, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          keep.keep(id, request(typed));
          return to(id, "kept");
        },
        refusal -> again(id, typed, refusal));
  }

  @POST
  @Path("/sent")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response sent(@RestPath String id, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          keep.sent(id, typed.text("sentOn"));
          return to(id, "sent");
        },
        refusal -> again(id, typed, refusal));
  }

  @POST
  @Path("/not-sent")
  public Response notSent(@RestPath String id) {
    keep.notSent(id);
    return to(id, "not-sent");
  }

  private static KeepOfficeSheet.Request request(Entries typed) {
    Asked asked = new Asked();
    Integer candidates = asked.number("candidates", typed.text("candidates"));
    Integer version = asked.number("version", typed.text("version"));
    asked.refuseIfFaulty();
    return new KeepOfficeSheet.Request(
        typed.text("arrival"),
        typed.text("vestingPlace"),
        typed.text("parking"),
        candidates,
        typed.text("company"),
        typed.text("brought"),
        typed.text("wanted"),
        typed.text("note"),
        version);
  }

  private Response again(String id, Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = FormAnswer.problem(refusal, marked, FIELDS);
    return PageAnswer.of(refusal.status(), Templates.office(sheet.view(id, "", marked, problem)));
  }

  private static Response to(String id, String done) {
    return PageAnswer.seeOther("/masses/%s/office?done=%s".formatted(id, done));
  }
}
