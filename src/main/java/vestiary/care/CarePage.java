package vestiary.care;

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
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.photo.KeepPhoto;
import vestiary.pool.Care;
import vestiary.pool.EndCare;
import vestiary.pool.PutInCare;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Says what is wrong with a piece, what that comes to, and that it is back. */
@Path("/care")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_VESTMENTS)
class CarePage {

  private static final List<String> FIELDS = List.of("kind", "from", "to", "reason", "photo");

  private static final Map<String, String> DONE =
      Map.of(
          "put",
          word("It is taken out of the pool."),
          "back",
          word("It is back."),
          "again",
          word("It is in care as before."));

  private final ReportWrong report;
  private final EndCare end;
  private final KeepPhoto photos;
  private final CareSheets sheets;
  private final CareList list;

  CarePage(ReportWrong report, EndCare end, KeepPhoto photos, CareSheets sheets, CareList list) {
    this.report = report;
    this.end = end;
    this.photos = photos;
    this.sheets = sheets;
    this.list = list;
  }

  @CheckedTemplate(basePath = "care")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(CareListView view);

    static native TemplateInstance form(CareForm view);

    static native TemplateInstance care(CareView view);
  }

  @GET
  @Transactional
  public TemplateInstance all() {
    return Templates.list(list.view());
  }

  @GET
  @Transactional
  @Path("/{code}")
  public TemplateInstance form(@RestPath String code) {
    return Templates.form(sheets.fresh(code));
  }

  @POST
  @Path("/{code}")
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response report(
      @RestPath String code,
      @RestForm @DefaultValue("") String kind,
      @RestForm @DefaultValue("") String from,
      @RestForm @DefaultValue("") String to,
      @RestForm @DefaultValue("") String reason,
      @RestForm @DefaultValue("") String whole,
      @RestForm FileUpload photo) {
    Entries typed =
        Entries.empty()
            .with("kind", kind)
            .with("from", from)
            .with("to", to)
            .with("reason", reason)
            .with("whole", whole);
    return FormAnswer.of(
        () -> {
          Care made =
              report.report(
                  code,
                  new PutInCare.Request(from, to, reason, kind),
                  typed.isTicked("whole"),
                  shown(photo));
          return to(made.piece(), made.id().toString(), "put");
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = FormAnswer.problem(refusal, marked, FIELDS);
          return PageAnswer.of(
              refusal.status(), Templates.form(sheets.form(code, marked, problem)));
        });
  }

  /** A form without a photograph sends an empty file. */
  private List<KeepPhoto.Ready> shown(FileUpload photo) {
    return photo == null || photo.size() == 0
        ? List.of()
        : List.of(photos.look(photo.uploadedFile()));
  }

  @GET
  @Transactional
  @Path("/{code}/{id}")
  public TemplateInstance one(
      @RestPath String code,
      @RestPath String id,
      @QueryParam("done") @DefaultValue("") String done) {
    return Templates.care(sheets.view(code, id, say(DONE.getOrDefault(done, ""))));
  }

  @POST
  @Path("/{code}/{id}/end")
  public Response end(@RestPath String code, @RestPath String id) {
    return end.end(code, id)
        ? to(code, id, "back")
        : PageAnswer.seeOther("/vestments/%s?done=struck".formatted(code));
  }

  @POST
  @Path("/{code}/{id}/reopen")
  public Response reopen(@RestPath String code, @RestPath String id) {
    end.reopen(code, id);
    return to(code, id, "again");
  }

  private static Response to(String code, String id, String done) {
    return PageAnswer.seeOther("/care/%s/%s?done=%s".formatted(code, id, done));
  }
}
