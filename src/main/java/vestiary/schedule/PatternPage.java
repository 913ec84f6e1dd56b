package vestiary.schedule;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

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
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Regular Mass times: listed, entered, changed, ended; what a change does is shown first. */
@Path("/patterns")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_PATTERNS)
class PatternPage {

  /** Sent by the button that, without JavaScript, asks the calendar again. */
  private static final String AGAIN = "again";

  /** What was looked at before it was confirmed. */
  private static final String SEEN = "seen";

  private static final Map<String, String> DONE =
      Map.of(
          "entered", word("Entered. Its Masses stand in the week and the day."),
          "changed", word("Changed, with its Masses to come."),
          "removed", word("Taken off, with its Masses to come. What is past stays."));

  private final PatternsSheet list;
  private final PatternFormView form;
  private final ShowPreview preview;
  private final PatternDeeds deeds;

  PatternPage(PatternsSheet list, PatternFormView form, ShowPreview preview, PatternDeeds deeds) {
    this.list = list;
    this.form = form;
    this.preview = preview;
    this.deeds = deeds;
  }

  @CheckedTemplate(basePath = "schedule")
  static class Templates {
    private Templates() {}

    static native TemplateInstance patterns(PatternsView view);

    static native TemplateInstance pattern(PatternForm view);

    static native TemplateInstance preview(PatternPreview preview);

    static native TemplateInstance effects(EffectsView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.patterns(list.view(say(DONE.getOrDefault(done, ""))));
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.ENTER_PATTERNS)
  public TemplateInstance fresh(@QueryParam("church") @DefaultValue("") String church) {
    return Templates.pattern(form.fresh(form.fresh(church), ""));
  }

  @GET
  @Transactional
  @Path("/preview")
  public TemplateInstance preview(@Context UriInfo uri) {
    return Templates.preview(preview.of(Entries.of(uri.getQueryParameters())));
  }

  @GET
  @Transactional
  @Path("/{id}")
  public TemplateInstance one(@RestPath String id) {
    return Templates.pattern(deeds.stored(id));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    if (sent.containsKey(AGAIN)) {
      return PageAnswer.of(200, Templates.pattern(deeds.fresh(typed, "")));
    }
    return FormAnswer.of(
        () -> {
          deeds.enter(typed);
          return PageAnswer.seeOther("/patterns?done=entered");
        },
        refusal -> {
          Entries marked = marked(typed, refusal);
          return again(refusal, deeds.fresh(marked, problem(refusal, marked)));
        });
  }

  /** Shows what the change does; done only once that was looked at. */
  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    if (sent.containsKey(AGAIN)) {
      return PageAnswer.of(200, Templates.pattern(deeds.typed(id, typed, "")));
    }
    return FormAnswer.of(
        () ->
            typed.text(SEEN).isEmpty() || !deeds.change(id, typed, typed.text(SEEN))
                ? PageAnswer.of(200, Templates.effects(deeds.effects(id, typed, typed.text(SEEN))))
                : PageAnswer.seeOther("/patterns?done=changed"),
        refusal -> {
          Entries marked = marked(typed, refusal);
          return again(refusal, deeds.typed(id, marked, problem(refusal, marked)));
        });
  }

  @GET
  @Transactional
  @Path("/{id}/removal")
  @Needs(Action.ENTER_PATTERNS)
  public TemplateInstance removal(@RestPath String id) {
    return Templates.effects(deeds.removal(id, ""));
  }

  @POST
  @Path("/{id}/removal")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response remove(@RestPath String id, MultivaluedMap<String, String> sent) {
    String seen = Entries.of(sent).text(SEEN);
    return deeds.remove(id, seen)
        ? PageAnswer.seeOther("/patterns?done=removed")
        : PageAnswer.of(200, Templates.effects(deeds.removal(id, seen)));
  }

  private static Entries marked(Entries typed, Refusal refusal) {
    return FormAnswer.mark(typed, refusal, PatternEntries.names(typed));
  }

  private static String problem(Refusal refusal, Entries marked) {
    return FormAnswer.problem(refusal, marked, PatternEntries.FIELDS);
  }

  private static Response again(Refusal refusal, PatternForm view) {
    return PageAnswer.of(refusal.status(), Templates.pattern(view));
  }
}
