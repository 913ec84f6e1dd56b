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
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One church, entered or changed with the journeys from it. */
@Path("/churches")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class ChurchPage {

  private final ReadCluster cluster;
  private final SaveChurchWithJourneys save;
  private final ChurchSheets sheets;

  ChurchPage(ReadCluster cluster, SaveChurchWithJourneys save, ChurchSheets sheets) {
    this.cluster = cluster;
    this.save = save;
    this.sheets = sheets;
  }

  @CheckedTemplate(basePath = "cluster")
  static class Templates {
    private Templates() {}

    static native TemplateInstance church(ChurchForm view);
  }

  @GET
  @Transactional
  public Response all() {
    return PageAnswer.seeOther("/settings");
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.SETTLE_CLUSTER)
  public TemplateInstance fresh() {
    return Templates.church(sheets.fresh(Entries.empty(), ""));
  }

  @GET
  @Transactional
  @Path("/{slug}")
  public TemplateInstance one(
      @RestPath String slug, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.church(
        sheets.stored(cluster.getChurch(slug), done.equals("saved") ? say("Saved.") : ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> saved(save.enter(request("", typed))),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, ChurchEntries.NAMES);
          return again(refusal, sheets.fresh(marked, problem(refusal, marked)));
        });
  }

  @POST
  @Path("/{slug}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String slug, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> saved(save.change(slug, request(slug, typed))),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, ChurchEntries.NAMES);
          Church church = cluster.getChurch(slug);
          return again(refusal, sheets.typed(church, marked, problem(refusal, marked)));
        });
  }

  private SaveChurchWithJourneys.Request request(String slug, Entries typed) {
    Asked asked = new Asked();
    SaveChurchWithJourneys.Request request = ChurchEntries.request(typed, asked);
    asked.add(save.findFaults(slug, request));
    asked.refuseIfFaulty();
    return request;
  }

  private String problem(Refusal refusal, Entries marked) {
    return FormAnswer.problem(refusal, marked, sheets.fields());
  }

  private static Response saved(String slug) {
    return PageAnswer.seeOther("/churches/" + slug + "?done=saved");
  }

  private static Response again(Refusal refusal, ChurchForm view) {
    return PageAnswer.of(refusal.status(), Templates.church(view));
  }
}
