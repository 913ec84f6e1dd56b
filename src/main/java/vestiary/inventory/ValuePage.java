package vestiary.inventory;

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
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.cluster.ReadCluster;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.problem.FormAnswer;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** What a piece is worth. */
@Path("/vestments/{code}/value")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SEE_VALUES)
class ValuePage {

  private final ValuePiece values;
  private final ReadPool pool;
  private final ReadCluster cluster;
  private final Frames frames;

  ValuePage(ValuePiece values, ReadPool pool, ReadCluster cluster, Frames frames) {
    this.values = values;
    this.pool = pool;
    this.cluster = cluster;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "inventory")
  static class Templates {
    private Templates() {}

    static native TemplateInstance value(ValueView view);
  }

  @GET
  @Transactional
  @Needs(Action.SEE_VALUES)
  public TemplateInstance one(
      @RestPath String code, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.value(view(code, done.equals("saved") ? say("Saved.") : "", Entries.empty()));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response value(@RestPath String code, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          values.value(
              code,
              new ValuePiece.Request(
                  typed.text("amount"), typed.text("currency"), typed.text("basis")));
          return PageAnswer.seeOther("/vestments/%s/value?done=saved".formatted(code));
        },
        refusal ->
            PageAnswer.of(
                refusal.status(),
                Templates.value(view(code, "", FormAnswer.mark(typed, refusal, Map.of())))));
  }

  private ValueView view(String code, String done, Entries entries) {
    PooledPiece piece = pool.get(code);
    List<Valuation> said = values.of(code);
    ZoneId zone = cluster.cluster().zone();
    String address = "/vestments/" + piece.code();
    return new ValueView(
        frames.of("vestments", address + "/value"),
        say("What %s is worth", piece.code()),
        done,
        new Link(piece.code(), address),
        address + "/value",
        entries.field("amount"),
        entries.field("currency"),
        entries.field("basis"),
        said.stream().map(one -> sentence(one, zone)).toList());
  }

  private static String sentence(Valuation one, ZoneId zone) {
    String basis = one.basis().isEmpty() ? "" : ": " + one.basis();
    return say(
        "%s, said on %s%s.",
        one.words(), Speech.dateAndYear(one.at().atZone(zone).toLocalDate()), basis);
  }
}
