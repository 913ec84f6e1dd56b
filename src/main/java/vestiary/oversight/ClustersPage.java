package vestiary.oversight;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpServerRequest;
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
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.ClusterCookies;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.cluster.ClusterWord;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** One's own cluster among the others of the server, and those into which one may look. */
@Path("/clusters")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OVERSEERS)
class ClustersPage {

  private static final Map<String, String> DONE =
      Map.of(
          "word", Speech.word("The word is changed. Tell your people the new address."),
          "in", Speech.word("From now on that overseer may look in."),
          "out", Speech.word("The leave is taken back."));

  private final ClustersSheet sheet;
  private final ClusterWord word;
  private final Overseers overseers;
  private final KnownOverseers known;
  private final OpenAnother open;
  private final CurrentVisitor current;
  private final ClusterCookies cookies;

  ClustersPage(
      ClustersSheet sheet,
      ClusterWord word,
      Overseers overseers,
      KnownOverseers known,
      OpenAnother open,
      CurrentVisitor current,
      ClusterCookies cookies) {
    this.sheet = sheet;
    this.word = word;
    this.overseers = overseers;
    this.known = known;
    this.open = open;
    this.current = current;
    this.cookies = cookies;
  }

  @CheckedTemplate(basePath = "oversight")
  static class Templates {
    private Templates() {}

    static native TemplateInstance clusters(ClustersView view);

    static native TemplateInstance opening(OpeningView view);
  }

  @GET
  public TemplateInstance all(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.clusters(view(Entries.empty(), Speech.say(DONE.getOrDefault(done, "")), ""));
  }

  @POST
  @Path("/word")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Needs(Action.SETTLE_CLUSTER)
  public Response changeWord(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          word.change(typed.text("word"));
          return PageAnswer.seeOther("/clusters?done=word");
        },
        refusal -> again(typed, refusal));
  }

  @POST
  @Path("/overseers")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response letIn(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          overseers.letIn(typed.text("code"));
          return PageAnswer.seeOther("/clusters?done=in");
        },
        refusal -> again(typed, refusal));
  }

  @POST
  @Path("/overseers/{id}/end")
  public Response takeBack(@RestPath String id) {
    overseers.takeBack(id);
    return PageAnswer.seeOther("/clusters?done=out");
  }

  @POST
  @Path("/{leave}/look")
  @Needs(Action.LOOK_ELSEWHERE)
  public Response look(@RestPath String leave, @Context HttpServerRequest request) {
    return Response.fromResponse(PageAnswer.seeOther("/week"))
        .cookie(cookies.look(known.get(current.visitor(), leave), request))
        .build();
  }

  @POST
  @Path("/back")
  @Needs(Action.LOOK_ELSEWHERE)
  public Response comeBack(@Context HttpServerRequest request) {
    return Response.fromResponse(PageAnswer.seeOther("/clusters"))
        .cookie(cookies.lookNowhere(request))
        .build();
  }

  @GET
  @Path("/new")
  @Needs(Action.OPEN_CLUSTERS)
  public TemplateInstance fresh() {
    return Templates.opening(sheet.opening(Entries.empty(), ""));
  }

  /** The link is shown on this very answer, and never again. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  @Needs(Action.OPEN_CLUSTERS)
  public Response open(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> PageAnswer.of(200, Templates.opening(sheet.opened(open.open(request(typed))))),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, ClustersSheet.OPENING);
          return PageAnswer.of(refusal.status(), Templates.opening(sheet.opening(marked, problem)));
        });
  }

  private static OpenAnother.Request request(Entries typed) {
    return new OpenAnother.Request(
        typed.text("name"),
        typed.text("word"),
        typed.text("calendar"),
        typed.text("timeZone"),
        typed.text("administrator"));
  }

  private Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = FormAnswer.problem(refusal, marked, ClustersSheet.FIELDS);
    return PageAnswer.of(refusal.status(), Templates.clusters(view(marked, "", problem)));
  }

  /** Where he may look is read in his own cluster, before anything of the present one is. */
  private ClustersView view(Entries typed, String done, String problem) {
    return sheet.view(known.of(current.visitor()), typed, done, problem);
  }
}
