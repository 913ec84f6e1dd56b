package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.Response;
import java.util.Map;
import java.util.UUID;
import vestiary.access.CurrentVisitor;
import vestiary.access.Visitor;
import vestiary.problem.FormAnswer;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.users.AccountSheet.Note;
import vestiary.web.Entries;
import vestiary.web.PageAnswer;

/** The account of whoever asks, as the page that each of its forms leads back to. */
@ApplicationScoped
class OwnAccount {

  private final CurrentVisitor current;
  private final AccountSheet sheet;

  OwnAccount(CurrentVisitor current, AccountSheet sheet) {
    this.current = current;
    this.sheet = sheet;
  }

  @CheckedTemplate(basePath = "users")
  static class Templates {
    private Templates() {}

    static native TemplateInstance account(AccountView view);
  }

  /**
   * Whose it is.
   *
   * @throws Refused if the token of the server asks, which is nobody's
   */
  UUID id() {
    if (current.visitor() instanceof Visitor.User user) {
      return user.id();
    }
    throw new Refused(
        new Refusal.NotAllowed(
            say("The token of the server belongs to nobody who has an account.")));
  }

  /** The page as it stands. */
  Response page(Note note) {
    return answer(200, Entries.empty(), note);
  }

  /** The page with one of its forms as it was typed, and what is wrong with it. */
  Response again(Entries typed, Refusal refusal) {
    Entries marked = FormAnswer.mark(typed, refusal, Map.of());
    String problem = marked.errors().isEmpty() ? refusal.detail() : "";
    return answer(refusal.status(), marked, new Note("", problem, "", ""));
  }

  private Response answer(int status, Entries entries, Note note) {
    return PageAnswer.of(status, Templates.account(sheet.view(id(), entries, note)));
  }
}
