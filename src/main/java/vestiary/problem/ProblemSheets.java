package vestiary.problem;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.runtime.BlockingOperationControl;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import vestiary.web.Frame;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Sets out a refusal, or a kind of it, as a page. */
@ApplicationScoped
class ProblemSheets {

  private static final int OUR_FAULT = 500;

  private static final Link WEEK = new Link(word("The week"), "/week");

  /** Where somebody who did not find a thing looks for it, by the first part of the address. */
  private static final Map<String, Link> LISTS =
      Map.of(
          "vestments", new Link(word("All vestments"), "/vestments"),
          "churches", new Link(word("All churches"), "/settings"),
          "propers", new Link(word("Days of your own"), "/propers"),
          "settings", new Link(word("Settings"), "/settings"),
          "import", new Link(word("Import"), "/import"),
          "clashes", new Link(word("All clashes"), "/clashes"),
          "day", new Link(word("Today"), "/day"),
          "year", new Link(word("The year"), "/year"));

  private final Frames frames;

  ProblemSheets(Frames frames) {
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "problem")
  static class Templates {
    private Templates() {}

    static native TemplateInstance problem(ProblemView view);
  }

  /** The page for one occurrence. */
  String render(Refusal refusal, String method, String path) {
    return Templates.problem(
            new ProblemView(
                frame(refusal),
                refusal.title(),
                refusal.detail(),
                refusal.kind().next(),
                links(refusal, method, path),
                refusal instanceof Refusal.Fault fault ? fault.reference() : ""))
        .render();
  }

  /** The page that explains a kind. */
  TemplateInstance explain(ProblemKind kind) {
    return Templates.problem(
        new ProblemView(
            frames.of("", kind.address()),
            kind.title(),
            kind.meaning(),
            kind.next(),
            List.of(WEEK.said()),
            ""));
  }

  private Frame frame(Refusal refusal) {
    return canRead(refusal) ? frames.of("", "/week") : Frame.empty();
  }

  /**
   * Nothing is read when the fault may lie in reading, where reading would hold up others, or for
   * whoever asks too much.
   */
  boolean canRead(Refusal refusal) {
    return refusal.status() < OUR_FAULT
        && refusal.kind() != ProblemKind.TOO_OFTEN
        && BlockingOperationControl.isBlockingAllowed();
  }

  private static List<Link> links(Refusal refusal, String method, String path) {
    if (refusal instanceof Refusal.DatabaseAway && method.equals("GET")) {
      return List.of(new Link(say("Try again"), path));
    }
    if (refusal instanceof Refusal.SignInFirst) {
      return List.of(new Link(say("Sign in"), "/sign-in"));
    }
    Link list = LISTS.getOrDefault(path.split("/", 3)[1], WEEK);
    return Stream.of(list, WEEK).distinct().map(Link::said).toList();
  }
}
