package vestiary.merger;

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
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** Closes a church, sends its pieces home elsewhere, opens it again. */
@Path("/churches/{slug}/closing")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class ClosingPage {

  private static final Map<String, String> DONE =
      Map.of(
          "closed", Speech.word("Closed. What was celebrated there stays."),
          "opened", Speech.word("Open again. Enter its Mass times anew."),
          "goods", Speech.word("Its pieces have another home now."));

  private static final List<String> FIELDS = List.of("from", "note", "to");

  private final CloseChurch close;
  private final ClosingSheet sheet;

  ClosingPage(CloseChurch close, ClosingSheet sheet) {
    this.close = close;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "merger")
  static class Templates {
    private Templates() {}

    static native TemplateInstance closing(ClosingView view);
  }

  /** What it does from a date on that is given in the address, before it is done. */
  @GET
  @Transactional
  @Needs(Action.SETTLE_CLUSTER)
  public TemplateInstance look(
      @RestPath String slug,
      @QueryParam("from") @DefaultValue("") String from,
      @QueryParam("done") @DefaultValue("") String done) {
    return Templates.closing(
        sheet.view(
            slug, Entries.empty().with("from", from), Speech.say(DONE.getOrDefault(done, "")), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response close(@RestPath String slug, MultivaluedMap<String, String> sent) {
    return answer(
        slug,
        sent,
        typed -> {
          close.close(slug, typed.text("from"), typed.text("note"));
          return "closed";
        });
  }

  @POST
  @Path("/goods")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response sendHome(@RestPath String slug, MultivaluedMap<String, String> sent) {
    return answer(
        slug,
        sent,
        typed -> {
          close.sendHome(slug, typed.text("to"));
          return "goods";
        });
  }

  @POST
  @Path("/end")
  public Response open(@RestPath String slug) {
    close.open(slug);
    return done(slug, "opened");
  }

  private Response answer(
      String slug, MultivaluedMap<String, String> sent, Function<Entries, String> deed) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> done(slug, deed.apply(typed)),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return PageAnswer.of(
              refusal.status(),
              Templates.closing(
                  sheet.view(slug, marked, "", FormAnswer.problem(refusal, marked, FIELDS))));
        });
  }

  private static Response done(String slug, String what) {
    return PageAnswer.seeOther("/churches/%s/closing?done=%s".formatted(slug, what));
  }
}
