package vestiary.backup;

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
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.multipart.FileUpload;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** The backup of the cluster, taken out and brought back from a browser. */
@Path("/backup")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_BACKUPS)
class BackupPage {

  private static final int UNFIT = 400;

  private final RestoreBackup restore;
  private final ReadTaken taken;
  private final Frames frames;

  BackupPage(RestoreBackup restore, ReadTaken taken, Frames frames) {
    this.restore = restore;
    this.taken = taken;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "backup")
  static class Templates {
    private Templates() {}

    static native TemplateInstance backup(BackupView view);
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_BACKUPS)
  public TemplateInstance form(@QueryParam("done") @DefaultValue("") String done) {
    return Templates.backup(
        view(done.equals("restored") ? say("The backup is back, with everything in it.") : "", ""));
  }

  @POST
  @Consumes(MediaType.MULTIPART_FORM_DATA)
  public Response bringBack(@RestForm FileUpload file) {
    if (file == null || file.size() == 0) {
      return refused(UNFIT, say("Choose a backup."));
    }
    return FormAnswer.of(
        () -> {
          restore.restore(file.uploadedFile());
          return PageAnswer.seeOther("/backup?done=restored");
        },
        refusal -> refused(refusal.status(), refusal.detail()));
  }

  private Response refused(int status, String sentence) {
    return PageAnswer.of(status, Templates.backup(view("", sentence)));
  }

  private BackupView view(String done, String fileError) {
    return new BackupView(
        frames.of("settings", "/backup"), taken.newest(), done, fileError, leftOut());
  }

  private static List<String> leftOut() {
    return Stream.concat(LeftOut.COLUMNS.values().stream(), LeftOut.TABLES.values().stream())
        .map(why -> Speech.say(why))
        .sorted()
        .toList();
  }
}
