package vestiary.absence;

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
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** When somebody comes to Masses from outside, and whether he brings vestments. */
@Path("/people/{slug}/arrivals")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_MASSES)
class ArrivalsPage {

  private final SayArrival say;
  private final ArrivalsSheet sheet;

  ArrivalsPage(SayArrival say, ArrivalsSheet sheet) {
    this.say = say;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "absence")
  static class Templates {
    private Templates() {}

    static native TemplateInstance arrivals(ArrivalsView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(
      @RestPath String slug, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.arrivals(
        sheet.view(slug, done.equals("saved") ? Speech.say("Kept.") : "", ""));
  }

  @POST
  @Path("/{mass}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response say(
      @RestPath String slug, @RestPath String mass, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    return FormAnswer.of(
        () -> {
          say.say(slug, mass, typed.text("arrives"), typed.text("brings"));
          return PageAnswer.seeOther("/people/%s/arrivals?done=saved".formatted(slug));
        },
        refusal ->
            PageAnswer.of(
                refusal.status(), Templates.arrivals(sheet.view(slug, "", refusal.detail()))));
  }
}
