package vestiary.users;

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
import java.util.Map;
import org.jboss.resteasy.reactive.RestPath;
import vestiary.access.Action;
import vestiary.access.Needs;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.users.UserSheets.Note;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** Who may come in: let in, given a role, let in no more. */
@Path("/users")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_USERS)
class UsersPage {

  private static final Map<String, String> DONE =
      Map.of(
          "saved", word("Saved."),
          "sessions", word("Signed out everywhere."),
          "tokens", word("No token is good any more."));

  private final SaveUser save;
  private final InviteUser invite;
  private final EndUse end;
  private final UserSheets sheets;

  UsersPage(SaveUser save, InviteUser invite, EndUse end, UserSheets sheets) {
    this.end = end;
    this.save = save;
    this.invite = invite;
    this.sheets = sheets;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance users(UsersView view);

    static native TemplateInstance user(UserForm view);
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_USERS)
  public TemplateInstance all() {
    return Templates.users(sheets.all());
  }

  @GET
  @Transactional
  @Path("/new")
  @Needs(Action.KEEP_USERS)
  public TemplateInstance fresh() {
    return Templates.user(sheets.fresh(Entries.empty(), Note.NONE));
  }

  @GET
  @Transactional
  @Path("/{id}")
  @Needs(Action.KEEP_USERS)
  public TemplateInstance one(
      @RestPath String id, @QueryParam("done") @DefaultValue("") String done) {
    return Templates.user(sheets.stored(id, new Note(say(DONE.getOrDefault(done, "")), "", "")));
  }

  /** The link is shown on this very answer, and never again. */
  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response enter(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          InviteUser.Invited invited = invite.enter(request(typed));
          return PageAnswer.of(200, withLink(invited));
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return again(refusal, sheets.fresh(marked, note(refusal, marked)));
        });
  }

  @POST
  @Path("/{id}")
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response change(@RestPath String id, MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    return FormAnswer.of(
        () -> {
          save.change(id, request(typed));
          return PageAnswer.seeOther("/users/%s?done=saved".formatted(id));
        },
        refusal -> {
          Entries marked = FormAnswer.mark(typed, refusal, Map.of());
          return again(refusal, sheets.typed(id, marked, note(refusal, marked)));
        });
  }

  @POST
  @Path("/{id}/link")
  public Response link(@RestPath String id) {
    return PageAnswer.of(200, withLink(invite.again(id)));
  }

  @POST
  @Path("/{id}/sessions/end")
  public Response endSessions(@RestPath String id) {
    end.sessions(id);
    return PageAnswer.seeOther("/users/%s?done=sessions".formatted(id));
  }

  @POST
  @Path("/{id}/tokens/end")
  public Response endTokens(@RestPath String id) {
    end.tokens(id);
    return PageAnswer.seeOther("/users/%s?done=tokens".formatted(id));
  }

  @POST
  @Path("/{id}/removal")
  public Response remove(@RestPath String id) {
    save.remove(id);
    return PageAnswer.seeOther("/users");
  }

  private TemplateInstance withLink(InviteUser.Invited invited) {
    return Templates.user(
        sheets.stored(invited.user().toString(), new Note("", "", invited.link())));
  }

  private static SaveUser.Request request(Entries typed) {
    return new SaveUser.Request(
        typed.text("login"),
        typed.text("name"),
        typed.text("role"),
        typed.all("churches"),
        typed.text("person"));
  }

  private static Note note(Refusal refusal, Entries marked) {
    return new Note("", FormAnswer.problem(refusal, marked, UserSheets.fields()), "");
  }

  private static Response again(Refusal refusal, UserForm view) {
    return PageAnswer.of(refusal.status(), Templates.user(view));
  }
}
