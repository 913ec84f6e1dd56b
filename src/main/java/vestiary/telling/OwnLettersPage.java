package vestiary.telling;

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
import java.util.Locale;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.access.Needs;
import vestiary.access.Visitor;
import vestiary.mail.MailServer;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.MailReaders;
import vestiary.web.Entries;
import vestiary.web.Frames;
import vestiary.web.PageAnswer;
import vestiary.web.Speech;

/** One's own choice of letters. */
@Path("/letters/mine")
@Produces(MediaType.TEXT_HTML)
@Needs(Action.KEEP_OWN_ACCOUNT)
class OwnLettersPage {

  private static final String ADDRESS = "/letters/mine";

  private final CurrentVisitor current;
  private final MailReaders readers;
  private final ChooseLetters choices;
  private final SettleTelling settings;
  private final MailServer server;
  private final Frames frames;

  OwnLettersPage(
      CurrentVisitor current,
      MailReaders readers,
      ChooseLetters choices,
      SettleTelling settings,
      MailServer server,
      Frames frames) {
    this.current = current;
    this.readers = readers;
    this.choices = choices;
    this.settings = settings;
    this.server = server;
    this.frames = frames;
  }

  @CheckedTemplate(basePath = "telling")
  static class Templates {
    private Templates() {}

    static native TemplateInstance own(OwnLettersView view);
  }

  @GET
  @Transactional
  @Needs(Action.KEEP_OWN_ACCOUNT)
  public TemplateInstance own(@QueryParam("done") @DefaultValue("") String done) {
    return page(done.equals("saved") ? say("Saved.") : "");
  }

  @POST
  @Consumes(MediaType.APPLICATION_FORM_URLENCODED)
  public Response choose(MultivaluedMap<String, String> form) {
    Entries typed = Entries.of(form);
    UUID reader = readers.of(user());
    return FormAnswer.of(
        () -> {
          choices.choose(reader, ChoiceWords.wish(typed, choices.of(reader)));
          return PageAnswer.seeOther(ADDRESS + "?done=saved");
        },
        refusal -> PageAnswer.of(refusal.status(), page("")));
  }

  private TemplateInstance page(String done) {
    UUID reader = readers.of(user());
    return Templates.own(
        new OwnLettersView(
            frames.of("account", ADDRESS),
            done,
            lead(reader),
            ChoiceWords.of(
                choices.of(reader),
                settings.read(),
                Tongue.of(Speech.localeOr(Locale.ENGLISH)),
                "stop.which",
                ADDRESS,
                readers.isSacristan(reader))));
  }

  private String lead(UUID reader) {
    if (!server.isOn()) {
      return say(
          "No mail server is named, so nothing is mailed yet. What you choose counts from the day that one is.");
    }
    return readers
        .find(reader)
        .map(address -> say("They go to %s.", address))
        .orElse(
            say(
                "No mail address of yours is known, so nothing is sent. Enter one under your account."));
  }

  /** The server's own token and shared devices are nobody's account. */
  private UUID user() {
    if (current.visitor() instanceof Visitor.User user) {
      return user.id();
    }
    throw new Refused(
        new Refusal.NotAllowed(say("Letters are chosen by people, each under their own name.")));
  }
}
