package vestiary.exchange;

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
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.calendar.Term;
import vestiary.problem.Asked;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.Frame;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/**
 * Lists that somebody sends from a browser: the file first, then which column holds what, then it
 * is tried and brought in, and undone if it was a mistake.
 */
@Path("/import")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SETTLE_CLUSTER)
class ImportPage {

  private static final int UNFIT = 400;

  /** So long somebody waits for a page without wondering. */
  private static final Duration PATIENCE = Duration.ofSeconds(1);

  private final ReceiveFile receive;
  private final TakeForAnother other;
  private final AskImport ask;
  private final ReadImport read;
  private final UndoImport undo;
  private final DoneImports done;
  private final AskedOfFile asked;
  private final Frames frames;

  ImportPage(
      ReceiveFile receive,
      TakeForAnother other,
      AskImport ask,
      ReadImport read,
      UndoImport undo,
      DoneImports done,
      AskedOfFile asked,
      Frames frames) {
    this.receive = receive;
    this.other = other;
    this.ask = ask;
    this.read = read;
    this.undo = undo;
    this.done = done;
    this.asked = asked;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "exchange")
  static class Templates {
    private Templates() {}

    static native TemplateInstance imports(ImportView view);

    static native TemplateInstance step(ImportStepView view);
  }

  @GET
  @Transactional
  public TemplateInstance form(@QueryParam("what") @DefaultValue("") String what) {
    return Templates.imports(view(Entries.empty().with("what", what), ""));
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  @Transactional
  public Response send(@RestForm @DefaultValue("") String what, @RestForm FileUpload file) {
    Entries typed = Entries.empty().with("what", what);
    boolean isKnown =
        what.equals(WhichList.UNSAID)
            || what.equals(ImportWords.CALENDAR)
            || Term.find(ImportWhat.class, what).isPresent();
    if (!isKnown) {
      return refused(UNFIT, typed, "what", say("Choose what is in the list."));
    }
    if (file == null || file.size() == 0) {
      return refused(UNFIT, typed, "file", say("Choose a file that has something in it."));
    }
    return FormAnswer.of(
        () -> to(receive.keep(what, file.fileName(), read(file)).toString()),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem = marked.errors().isEmpty() ? refusal.detail() : "";
          return PageAnswer.of(refusal.status(), Templates.imports(view(marked, problem)));
        });
  }

  /** How far a list is, and what is asked about it. */
  @GET
  @Path("/{id}")
  @Transactional
  public TemplateInstance one(@RestPath String id, @QueryParam("page") String page) {
    Asked number = new Asked();
    int wanted = number.whole("page", number.number("page", page), 1, 1000, 1);
    number.refuseIfFaulty();
    return Templates.step(read.view(frame("/import/" + id), id, Entries.empty(), "", wanted));
  }

  /** Tries it or brings it in. */
  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response bringIn(@RestPath String id, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          ask.ask(id, asked.chosen(id, typed), !typed.text("dryRun").equals("false"));
          ask.look();
          ask.await(id, PATIENCE);
          return to(id);
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          String problem =
              FormAnswer.problem(refusal, marked, List.copyOf(marked.errors().keySet()));
          return PageAnswer.of(
              refusal.status(),
              Templates.step(read.view(frame("/import/" + id), id, marked, problem, 1)));
        });
  }

  /** Takes the same file for another list. */
  @POST
  @Path("/{id}/what")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response retake(@RestPath String id, @RestForm @DefaultValue("") String what) {
    return FormAnswer.of(
        () -> {
          other.take(id, what);
          return to(id);
        },
        refusal -> asItStands(id, refusal));
  }

  @POST
  @Path("/{id}/cancel")
  public Response cancel(@RestPath String id) {
    ask.cancel(id);
    return to(id);
  }

  @POST
  @Path("/{id}/undo")
  public Response undo(@RestPath String id) {
    return FormAnswer.of(
        () -> {
          undo.undo(id);
          return to(id);
        },
        refusal -> asItStands(id, refusal));
  }

  private Response asItStands(String id, Refusal refusal) {
    return PageAnswer.of(
        refusal.status(),
        Templates.step(
            read.view(frame("/import/" + id), id, Entries.empty(), refusal.detail(), 1)));
  }

  private Response refused(int status, Entries typed, String field, String sentence) {
    return PageAnswer.of(
        status, Templates.imports(view(typed.withErrors(Map.of(field, sentence)), "")));
  }

  private ImportView view(Entries typed, String problem) {
    return ImportSheet.view(frame("/import"), typed, problem, done.all());
  }

  private Frame frame(String address) {
    return frames.of("import", address);
  }

  private static Response to(String id) {
    return PageAnswer.seeOther("/import/" + id);
  }

  private static byte[] read(FileUpload file) {
    try {
      return Files.readAllBytes(file.uploadedFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
