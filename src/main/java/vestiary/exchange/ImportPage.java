package vestiary.exchange;

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.Term;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** A list that somebody sends from a browser: tried first, then brought in. */
@Path("/import")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class ImportPage {

  private static final int UNFIT = 400;
  private static final int BAD_LINES = 422;

  private final ImportCsv imports;
  private final Frames frames;

  ImportPage(ImportCsv imports, Frames frames) {
    this.imports = imports;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "exchange")
  static class Templates {
    private Templates() {}

    static native TemplateInstance imports(ImportView view);
  }

  @GET
  @Transactional
  public TemplateInstance form(@QueryParam("what") @DefaultValue("") String what) {
    return Templates.imports(ImportSheet.view(frame(), Entries.empty().with("what", what)));
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response bringIn(
      @RestForm @DefaultValue("") String what,
      @RestForm @DefaultValue("true") String dryRun,
      @RestForm FileUpload file) {
    Entries typed = Entries.empty().with("what", what);
    Optional<ImportWhat> list = Term.find(ImportWhat.class, what);
    if (list.isEmpty()) {
      return refused(UNFIT, typed, "what", "Choose what is in the list.");
    }
    if (file == null || file.size() == 0) {
      return refused(UNFIT, typed, "file", "Choose a file that has something in it.");
    }
    return bringIn(list.get(), read(file), !dryRun.equals("false"), typed);
  }

  private Response bringIn(ImportWhat what, byte[] file, boolean isTrial, Entries typed) {
    return FormAnswer.of(
        () -> {
          ImportCsv.Outcome outcome = imports.bringIn(what, file, DateWords.ISO, isTrial);
          int status = isTrial || outcome.done() ? 200 : BAD_LINES;
          ImportView.Result result = ImportSheet.result(outcome, file, isTrial);
          return answer(status, ImportSheet.view(frame(), typed, result));
        },
        refusal -> refused(refusal.status(), typed, "file", refusal.detail()));
  }

  private Response refused(int status, Entries typed, String field, String sentence) {
    return answer(status, ImportSheet.view(frame(), typed.withErrors(Map.of(field, sentence))));
  }

  private Frame frame() {
    return frames.of("import", "/import");
  }

  private static Response answer(int status, ImportView view) {
    return PageAnswer.of(status, Templates.imports(view));
  }

  private static byte[] read(FileUpload file) {
    try {
      return Files.readAllBytes(file.uploadedFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
