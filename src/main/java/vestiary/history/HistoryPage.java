package vestiary.history;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.ReadPool;
import vestiary.problem.Asked;
import vestiary.web.Frames;

/** Who changed what: lately, of one thing, by one person. */
@Path("/history")
@Produces(MediaType.TEXT_HTML)
class HistoryPage {

  private final ReadHistory history;
  private final ReadPool pool;
  private final Frames frames;

  HistoryPage(ReadHistory history, ReadPool pool, Frames frames) {
    this.history = history;
    this.pool = pool;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "history")
  static class Templates {
    private Templates() {}

    static native TemplateInstance history(HistoryView view);
  }

  @GET
  @Transactional
  @Needs(Action.LOOK_BACK)
  public TemplateInstance newest() {
    return page("The newest 200 changes.", "/history", history.newest());
  }

  /** Of a Mass, a user, or whatever else has this id. */
  @GET
  @Transactional
  @Path("/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofOne(@RestPath String id) {
    return page(
        "The newest 200 changes of one thing.",
        "/history/" + id,
        history.of(Asked.id("change", id)));
  }

  @GET
  @Transactional
  @Path("/vestments/{code}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofPiece(@RestPath String code) {
    return page(
        "The newest 200 changes of %s, care included.".formatted(code),
        "/history/vestments/" + code,
        history.of(pool.id(code)));
  }

  @GET
  @Transactional
  @Path("/masses/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance ofMass(@RestPath String id) {
    return page(
        "The newest 200 changes of one Mass.",
        "/history/masses/" + id,
        history.of(Asked.id("Mass", id)));
  }

  /** Those that the user made, not those made to the user. */
  @GET
  @Transactional
  @Path("/users/{id}")
  @Needs(Action.LOOK_BACK)
  public TemplateInstance byUser(@RestPath String id) {
    return page(
        "The newest 200 changes that one person made.",
        "/history/users/" + id,
        history.by(Asked.id("user", id)));
  }

  private TemplateInstance page(String about, String address, List<HistoryView.Change> changes) {
    return Templates.history(new HistoryView(frames.of("", address), about, changes));
  }
}
