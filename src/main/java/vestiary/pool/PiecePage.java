package vestiary.pool;

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
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriBuilder;
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.PieceSheets.Note;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** One piece: entered, changed, withdrawn from use, taken out of the list. */
@Path("/vestments")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_VESTMENTS)
class PiecePage {

  private static final Map<String, String> DONE =
      Map.of(
          "saved",
          word("Saved."),
          "struck",
          word("Its care is struck out."),
          "withdrawn",
          word("It is withdrawn from use."),
          "used",
          word("It is in use again."));

  private final ReadPool pool;
  private final SavePiece save;
  private final WithdrawPiece withdraw;
  private final PieceSheets sheets;

  PiecePage(ReadPool pool, SavePiece save, WithdrawPiece withdraw, PieceSheets sheets) {
    this.pool = pool;
    this.save = save;
    this.withdraw = withdraw;
    this.sheets = sheets;
  }

  @CheckedTemplate(basePath = "pool")
  static class Templates {
    private Templates() {}

    static native TemplateInstance piece(PieceForm view);
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.KEEP_VESTMENTS)
  public TemplateInstance fresh(@QueryParam("church") @DefaultValue("") String church) {
    return Templates.piece(sheets.fresh(Entries.empty().with("home", church), Note.NONE));
  }

  @GET
  @Transactional
  @Path("/{code}")
  public TemplateInstance one(
      @RestPath String code, @QueryParam("done") @DefaultValue("") String done) {
    Note note = Note.done(say(DONE.getOrDefault(done, "")));
    return Templates.piece(sheets.stored(pool.get(code), note));
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> to(save.enter(PieceEntries.request(typed)), "saved"),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, PieceEntries.NAMES);
          return again(refusal, sheets.fresh(marked, note(refusal, marked)));
        });
  }

  @POST
  @Path("/{code}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String code, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> to(save.change(code, PieceEntries.request(typed)), "saved"),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, PieceEntries.NAMES);
          return again(refusal, sheets.typed(pool.get(code), marked, note(refusal, marked)));
        });
  }

  @POST
  @Path("/{code}/removal")
  public Response remove(@RestPath String code) {
    save.remove(code);
    return PageAnswer.seeOther("/vestments?done=removed");
  }

  @POST
  @Path("/{code}/withdrawal")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response withdraw(@RestPath String code, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () ->
            to(
                withdraw.withdraw(
                    code,
                    new WithdrawPiece.Request(
                        typed.text("on"), typed.text("reason"), typed.text("to"))),
                "withdrawn"),
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return again(refusal, sheets.typedLeave(pool.get(code), marked, note(refusal, marked)));
        });
  }

  @POST
  @Path("/{code}/return")
  public Response takeBack(@RestPath String code) {
    withdraw.takeBack(code);
    return to(code, "used");
  }

  private static Note note(Refusal refusal, Entries marked) {
    return Note.problem(FormAnswer.problem(refusal, marked, PieceEntries.FIELDS));
  }

  private static Response again(Refusal refusal, PieceForm view) {
    return PageAnswer.of(refusal.status(), Templates.piece(view));
  }

  private static Response to(String code, String done) {
    return PageAnswer.seeOther(
        UriBuilder.fromPath("/vestments/{code}").queryParam("done", done).build(code));
  }
}
