package vestiary.cluster;

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
import java.util.Map;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.PageAnswer;

/** The cluster's calendar and policies, and its churches. */
@Path("/settings")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class SettingsPage {

  private static final List<String> FIELDS =
      Stream.concat(CalendarEntries.FIELDS.stream(), PolicyEntries.FIELDS.stream()).toList();

  private final ReadCluster cluster;
  private final ChangeSettings change;
  private final Frames frames;

  SettingsPage(ReadCluster cluster, ChangeSettings change, Frames frames) {
    this.cluster = cluster;
    this.change = change;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "cluster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance settings(SettingsView view);
  }

  @GET
  @Transactional
  public TemplateInstance form(@QueryParam("done") @DefaultValue("") String done) {
    Cluster here = cluster.cluster();
    Entries stored = PolicyEntries.with(CalendarEntries.from(here), here);
    return page(stored, done.equals("saved") ? say("Saved.") : "", "");
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          change.change(request(typed));
          return PageAnswer.seeOther("/settings?done=saved");
        },
        refusal -> again(typed, refusal));
  }

  private ChangeSettings.Request request(Entries typed) {
    Asked asked = new Asked();
    ChangeSettings.Request request =
        CalendarEntries.request(
            typed,
            PolicyEntries.request(typed, asked),
            asked.number("version", typed.text("version")));
    asked.add(change.findFaults(request));
    asked.refuseIfFaulty();
    return request;
  }

  private Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = FormAnswer.problem(refusal, marked, FIELDS);
    return PageAnswer.of(refusal.status(), page(marked, "", problem));
  }

  private TemplateInstance page(Entries entries, String done, String problem) {
    return Templates.settings(
        new SettingsView(
            frames.of("settings", "/settings"),
            "/settings",
            done,
            problem,
            CalendarEntries.fields(entries),
            PolicyEntries.fields(entries),
            cluster.churches().stream().map(SettingsPage::church).toList(),
            new Link(say("Add a church"), "/churches/new"),
            new Link(say("Days of your own"), "/propers"),
            entries.text("version")));
  }

  private static SettingsView.Church church(Church church) {
    return new SettingsView.Church(
        church.name(),
        church.place(),
        say(
            "set out %d minutes before, cleared %d after",
            church.setOut().toMinutes(), church.clearance().toMinutes()),
        "/churches/" + church.slug());
  }
}
