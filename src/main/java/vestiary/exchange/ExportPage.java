package vestiary.exchange;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.Arrays;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.web.Frames;

/** All lists, to be taken out. */
@Path("/take-out")
@Produces(MediaType.TEXT_HTML)
class ExportPage {

  private final WriteCsv lists;
  private final Frames frames;

  ExportPage(WriteCsv lists, Frames frames) {
    this.lists = lists;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "exchange")
  static class Templates {
    private Templates() {}

    static native TemplateInstance exports(ExportView view);
  }

  @GET
  @Transactional
  @Needs(Action.TAKE_OUT)
  public TemplateInstance all() {
    return Templates.exports(
        new ExportView(
            frames.of("import", "/take-out"),
            Arrays.stream(ImportWhat.values()).map(this::list).toList()));
  }

  private ExportView.ListOut list(ImportWhat what) {
    return new ExportView.ListOut(
        ImportWords.name(what),
        ExportWords.count(lists.lines(what).size()),
        ExportWords.leftOut(what),
        "/api/exports/%s.csv".formatted(what.id()),
        what.id() + ".csv");
  }
}
