package vestiary.times;

import static vestiary.web.Speech.say;

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
import java.util.Locale;
import java.util.Map;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.access.OpenToAll;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** Mass times for the people, without sign-in: nothing but what was published. */
@Path("/times")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.PUBLISH_TIMES)
class TimesPage {

  private final TimesSheet sheet;
  private final PublishTimes publish;

  TimesPage(TimesSheet sheet, PublishTimes publish) {
    this.sheet = sheet;
    this.publish = publish;
  }

  @CheckedTemplate(basePath = "times")
  static class Templates {
    private Templates() {}

    static native TemplateInstance times(TimesView view);

    static native TemplateInstance door(TimesView view);
  }

  @GET
  @Transactional
  @OpenToAll
  public TemplateInstance week(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("lang") @DefaultValue("") String language,
      @QueryParam("cluster") @DefaultValue("") String cluster,
      @QueryParam("week") @DefaultValue("") String week,
      @QueryParam("done") @DefaultValue("") String done) {
    String said = done.equals("published") ? say("Published: this is what people see now.") : "";
    return Templates.times(
        sheet.view(
            new TimesAsked(church, orOfReader(language), cluster, week),
            new PressSheet.Note(said, "", Entries.empty())));
  }

  /** On one A4, in large type, for the church door. */
  @GET
  @Transactional
  @OpenToAll
  @Path("/door")
  public TemplateInstance door(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("lang") @DefaultValue("") String language,
      @QueryParam("cluster") @DefaultValue("") String cluster,
      @QueryParam("week") @DefaultValue("") String week) {
    return Templates.door(
        sheet.view(new TimesAsked(church, language, cluster, week), PressSheet.Note.NONE));
  }

  @GET
  @Transactional
  @OpenToAll
  @Path("/bulletin.txt")
  @Produces("text/plain;charset=UTF-8")
  public String bulletin(
      @QueryParam("church") @DefaultValue("") String church,
      @QueryParam("lang") @DefaultValue("") String language,
      @QueryParam("cluster") @DefaultValue("") String cluster,
      @QueryParam("week") @DefaultValue("") String week) {
    TimesAsked asked = new TimesAsked(church, language, cluster, week);
    return new Bulletin(sheet.week(asked, publish.find()), church.isEmpty()).text();
  }

  @POST
  @Path("/publish")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response publish(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          publish.publish(typed.text("weeks"));
          return PageAnswer.seeOther("/times?done=published");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, List.of("weeks"));
          return PageAnswer.of(
              refusal.status(),
              Templates.times(
                  sheet.view(
                      new TimesAsked("", orOfReader(""), "", ""),
                      new PressSheet.Note("", problem, marked))));
        });
  }

  /** What hangs at a door or stands in a bulletin does not depend on whose browser printed it. */
  private static String orOfReader(String language) {
    return language.isEmpty() ? Speech.locale().map(Locale::toLanguageTag).orElse("") : language;
  }
}
