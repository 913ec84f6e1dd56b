package vestiary.proper;

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
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** The days of one's own: all of them with what becomes of each, and a form for one. */
@Path("/propers")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.ENTER_PROPERS)
class ProperPage {

  private static final Map<String, String> DONE =
      Map.of("saved", word("Saved."), "removed", word("Removed."));

  private final ReadPropers propers;
  private final SaveProper save;
  private final ProperSheets sheets;
  private final ChurchesToBind churches;
  private final Frames frames;
  private final Clock clock;

  ProperPage(
      ReadPropers propers,
      SaveProper save,
      ProperSheets sheets,
      ChurchesToBind churches,
      Frames frames,
      Clock clock) {
    this.propers = propers;
    this.save = save;
    this.sheets = sheets;
    this.churches = churches;
    this.frames = frames;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "proper")
  static class Templates {
    private Templates() {}

    static native TemplateInstance propers(PropersView view);

    static native TemplateInstance proper(ProperForm view);

    static native TemplateInstance removal(RemovalView view);
  }

  @GET
  @Transactional
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    KnownCelebrations known =
        new KnownCelebrations(churches.settings(), churches.titled(), propers.all());
    LocalDate today = LocalDate.now(clock.withZone(churches.zone()));
    return Templates.propers(
        new PropersSheet(known, today, Speech.localeOr(churches.language()))
            .view(frames.of("settings", ProperSheets.ALL), say(DONE.getOrDefault(done, ""))));
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.ENTER_PROPERS)
  public TemplateInstance fresh(@QueryParam("for") @DefaultValue("") String what) {
    Entries empty = Entries.empty();
    return Templates.proper(
        sheets.fresh(what.equals("one-year") ? empty.with("keptOn", "") : empty, ""));
  }

  @GET
  @Transactional
  @Path("/{id}")
  @Needs(Action.ENTER_PROPERS)
  public TemplateInstance one(@RestPath String id) {
    return Templates.proper(sheets.stored(propers.get(id)));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> saved(save.enter(request(typed))),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return again(refusal, sheets.fresh(marked, problem(refusal, marked)));
        });
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          save.change(id, request(typed));
          return saved(id);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return again(refusal, sheets.typed(propers.get(id), marked, problem(refusal, marked)));
        });
  }

  @GET
  @Transactional
  @Path("/{id}/removal")
  @Needs(Action.ENTER_PROPERS)
  public TemplateInstance question(@RestPath String id) {
    return Templates.removal(sheets.removal(propers.get(id), ""));
  }

  @POST
  @Path("/{id}/removal")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response remove(@RestPath String id, MultivaluedMap<String, String> form) {
    Asked asked = new Asked();
    Integer version = asked.number("version", Entries.of(form).text("version"));
    asked.refuseIfFaulty();
    return FormAnswer.of(
        () -> {
          save.remove(id, version);
          return PageAnswer.seeOther(ProperSheets.ALL + "?done=removed");
        },
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.removal(sheets.removal(propers.get(id), refusal.detail()))));
  }

  private SaveProper.Request request(Entries typed) {
    Asked asked = new Asked();
    SaveProper.Request request = ProperEntries.request(typed, asked);
    if (!asked.isFaulty()) {
      asked.add(save.findFaults(request));
    }
    asked.refuseIfFaulty();
    return request;
  }

  private static String problem(Refusal refusal, Entries marked) {
    return FormAnswer.problem(refusal, marked, ProperEntries.FIELDS);
  }

  private static Response saved(String id) {
    return PageAnswer.seeOther(ProperSheets.ALL + "?done=saved#day-" + id);
  }

  private static Response again(Refusal refusal, ProperForm view) {
    return PageAnswer.of(refusal.status(), Templates.proper(view));
  }
}
