package vestiary.onemore;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One more has come: one press shows what is at hand for him, another takes it. */
@Path("/masses/{id}/one-more")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SET_OUT)
class OneMorePage {

  private final OneMoreSheet sheet;
  private final TakeOneMore take;

  OneMorePage(OneMoreSheet sheet, TakeOneMore take) {
    this.sheet = sheet;
    this.take = take;
  }

  @CheckedTemplate(basePath = "onemore")
  static class Templates {
    private Templates() {}

    static native TemplateInstance oneMore(OneMoreView view);
  }

  @GET
  @Transactional
  public TemplateInstance show(
      @RestPath String id, @QueryParam("role") String role, @QueryParam("height") String height) {
    return Templates.oneMore(view(id, TakeOneMore.read(request(role, "", List.of(), height)), ""));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response take(@RestPath String id, MultivaluedMap<String, String> sent) {
    Entries typed = Entries.of(sent);
    TakeOneMore.Request asked =
        request(typed.text("role"), typed.text("way"), typed.all("piece"), typed.text("height"));
    TakeOneMore.Wish wish = TakeOneMore.read(asked);
    return FormAnswer.of(
        () -> {
          take.take(id, asked);
          return seen(id, wish.role().id());
        },
        refusal ->
            PageAnswer.of(refusal.status(), Templates.oneMore(view(id, wish, refusal.detail()))));
  }

  @POST
  @Path("/{person}/undo")
  public Response undo(@RestPath String id, @RestPath String person) {
    take.undo(id, person);
    return PageAnswer.seeOther("/masses/%s/one-more".formatted(id));
  }

  private OneMoreView view(String id, TakeOneMore.Wish wish, String problem) {
    return sheet.view(id, wish.role(), wish.albs(), problem);
  }

  private static TakeOneMore.Request request(
      String role, String way, List<String> pieces, String height) {
    Asked asked = new Asked();
    Integer tall = asked.number("height", height);
    asked.refuseIfFaulty();
    return new TakeOneMore.Request(role, way, pieces, tall);
  }

  private static Response seen(String id, String role) {
    return PageAnswer.seeOther("/masses/%s/one-more?role=%s".formatted(id, role));
  }
}
