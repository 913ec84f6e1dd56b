package vestiary.label;

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
import jakarta.ws.rs.core.UriBuilder;
import java.util.function.Function;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.pool.TakeHome;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.sending.FindItem;
import vestiary.sending.Item;
import vestiary.sending.SendOut;
import vestiary.sending.TakeIn;
import vestiary.sending.UndoSending;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;

/** What the scan of a label opens on a phone: what it is, and two presses. */
@Path("/s")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.SEND)
class ScanPage {

  private static final int NOT_THERE = 404;

  private final FindItem items;
  private final ScanSheet sheet;
  private final SendingForms forms;
  private final DueOut dueOut;
  private final SendOut send;
  private final TakeIn take;
  private final TakeHome home;
  private final UndoSending undo;
  private final Frames frames;

  ScanPage(
      FindItem items,
      ScanSheet sheet,
      SendingForms forms,
      DueOut dueOut,
      SendOut send,
      TakeIn take,
      TakeHome home,
      UndoSending undo,
      Frames frames) {
    this.items = items;
    this.sheet = sheet;
    this.forms = forms;
    this.dueOut = dueOut;
    this.send = send;
    this.take = take;
    this.home = home;
    this.undo = undo;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "label")
  static class Templates {
    private Templates() {}

    static native TemplateInstance scan(ScanView view);

    static native TemplateInstance typing(TypingView view);

    static native TemplateInstance out(OutView view);

    static native TemplateInstance back(BackView view);
  }

  /** Where a code is typed by hand; with one, it leads on. */
  @GET
  @Transactional
  public Response typing(@QueryParam("code") @DefaultValue("") String code) {
    String typed = code.strip();
    return typed.isEmpty()
        ? PageAnswer.of(200, Templates.typing(view("", "")))
        : PageAnswer.seeOther(UriBuilder.fromPath("/s/{code}").build(typed));
  }

  @GET
  @Transactional
  @Path("/{code}")
  public Response scan(@RestPath String code, @QueryParam("done") @DefaultValue("") String done) {
    return items
        .find(code)
        .map(item -> PageAnswer.of(200, Templates.scan(sheet.view(item, done, ""))))
        .orElseGet(() -> unknown(code));
  }

  /** A label of another cluster says nothing about what it hangs on. */
  private Response unknown(String code) {
    return PageAnswer.of(
        NOT_THERE,
        Templates.typing(
            view(
                code,
                say(
                    "No set and no piece here has the code “%s”. Look whether it was typed right; a label from elsewhere is opened by those whose it is.",
                    code))));
  }

  private TypingView view(String code, String problem) {
    return new TypingView(frames.of("vestments", "/s"), code, problem, dueOut.lines());
  }

  @GET
  @Transactional
  @Path("/{code}/out")
  @Needs(Action.SEND)
  public TemplateInstance outForm(@RestPath String code) {
    return Templates.out(forms.out(get(code), Entries.empty(), ""));
  }

  @POST
  @Path("/{code}/out")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response out(@RestPath String code, MultivaluedMap<String, String> sent) {
    Item item = get(code);
    Entries typed = Entries.of(sent);
    boolean atOnce = typed.all("whom").isEmpty();
    return said(
        item,
        "out",
        () -> send.send(item, SendingForms.outRequest(typed)),
        refusal ->
            atOnce
                ? again(item, refusal)
                : PageAnswer.of(
                    refusal.status(), Templates.out(forms.outAgain(item, typed, refusal))));
  }

  @GET
  @Transactional
  @Path("/{code}/back")
  @Needs(Action.SEND)
  public TemplateInstance backForm(@RestPath String code) {
    return Templates.back(forms.back(get(code), Entries.empty(), ""));
  }

  @POST
  @Path("/{code}/back")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response back(@RestPath String code, MultivaluedMap<String, String> sent) {
    Item item = get(code);
    Entries typed = Entries.of(sent);
    boolean atOnce = typed.all("taker").isEmpty();
    return said(
        item,
        "back",
        () -> take.take(item, SendingForms.backRequest(typed)),
        refusal ->
            atOnce
                ? again(item, refusal)
                : PageAnswer.of(
                    refusal.status(), Templates.back(forms.backAgain(item, typed, refusal))));
  }

  /** It lies at home, though nobody said that it went. */
  @POST
  @Path("/{code}/home")
  public Response home(@RestPath String code) {
    Item item = get(code);
    return said(
        item,
        "home",
        () -> home.take(new TakeHome.Request(item.codes())),
        refusal -> again(item, refusal));
  }

  @POST
  @Path("/{code}/undo")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response undo(@RestPath String code, MultivaluedMap<String, String> sent) {
    Item item = get(code);
    Entries typed = Entries.of(sent);
    boolean out = !typed.text("out").isEmpty();
    return said(
        item,
        "undone",
        () ->
            undo.undo(
                out ? typed.text("out") : typed.text("back"),
                out ? UndoSending.Act.OUT : UndoSending.Act.BACK),
        refusal -> again(item, refusal));
  }

  /** Does it, and leads back to the page of the thing, which says that it was done. */
  private static Response said(
      Item item, String done, Runnable deed, Function<Refusal, Response> refused) {
    return FormAnswer.of(
        () -> {
          deed.run();
          return to(item, done);
        },
        refused);
  }

  private Item get(String code) {
    return items
        .find(code)
        .orElseThrow(() -> new Refused(new Refusal.NotThere("set or piece", code)));
  }

  private Response again(Item item, Refusal refusal) {
    return PageAnswer.of(refusal.status(), Templates.scan(sheet.view(item, "", refusal.detail())));
  }

  private static Response to(Item item, String done) {
    return PageAnswer.seeOther(
        UriBuilder.fromPath("/s/{code}").queryParam("done", done).build(item.code()));
  }
}
