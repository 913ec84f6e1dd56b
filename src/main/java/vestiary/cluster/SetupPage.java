package vestiary.cluster;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.PageAnswer;

/** The first page of a cluster that nobody has set up; once that is done, it leads to settings. */
@Path("/setup")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class SetupPage {

  private static final String SETTINGS = "/settings";

  private final ReadCluster cluster;
  private final ChangeSettings change;

  SetupPage(ReadCluster cluster, ChangeSettings change) {
    this.cluster = cluster;
    this.change = change;
  }

  @CheckedTemplate(basePath = "cluster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance setup(SetupView view);
  }

  @GET
  @Transactional
  @Needs(Action.SETTLE_CLUSTER)
  public Response form() {
    Cluster here = cluster.cluster();
    return here.isSetUp()
        ? PageAnswer.seeOther(SETTINGS)
        : PageAnswer.of(200, page(CalendarEntries.from(here), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response setUp(MultivaluedMap<String, String> form) {
    if (cluster.isSetUp()) {
      return PageAnswer.seeOther(SETTINGS);
    }
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          change.change(CalendarEntries.request(typed, null, null));
          return PageAnswer.seeOther(
              typed.text("next").equals("import") ? "/import" : "/churches/new");
        },
        refusal -> again(typed, refusal));
  }

  private static Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = FormAnswer.problem(refusal, marked, CalendarEntries.FIELDS);
    return PageAnswer.of(refusal.status(), page(marked, problem));
  }

  private static TemplateInstance page(Entries entries, String problem) {
    return Templates.setup(
        new SetupView(Frame.empty(), "/setup", problem, CalendarEntries.fields(entries)));
  }
}
