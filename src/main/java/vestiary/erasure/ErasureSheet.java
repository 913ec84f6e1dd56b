package vestiary.erasure;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import vestiary.users.ForgetUser;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Says what goes and what stays. */
@ApplicationScoped
class ErasureSheet {

  private static final String FROM_TEXTS =
      Speech.word(
          "The name wherever it stands in notes, intentions, plans, answers and in the history of changes.");

  private final RemoveForGood remove;
  private final ForgetUser users;
  private final Frames frames;

  ErasureSheet(RemoveForGood remove, ForgetUser users, Frames frames) {
    this.remove = remove;
    this.users = users;
    this.frames = frames;
  }

  @Transactional
  ErasureView person(String slug, String problem) {
    RemoveForGood.Outlook outlook = remove.look(slug);
    String name = outlook.person().calledName();
    String address = "/people/" + slug;
    return new ErasureView(
        frames.of("settings", address + "/erasure"),
        name,
        problem,
        goes(outlook),
        stays(outlook),
        address + "/erasure",
        new Link(say("Leave it as it is"), address));
  }

  @Transactional
  ErasureView user(String id, String problem) {
    ForgetUser.Account account = users.get(id);
    String address = "/users/" + account.id();
    return new ErasureView(
        frames.of("settings", address + "/erasure"),
        account.name(),
        problem,
        List.of(accountGoes(account), Speech.say(FROM_TEXTS)),
        List.of(
            say("What was changed stays in the history, as changed by a person who was removed."),
            say("Whoever of that name is in the list of people stays there; remove them there.")),
        address + "/erasure",
        new Link(say("Leave it as it is"), address));
  }

  private static List<String> goes(RemoveForGood.Outlook outlook) {
    List<String> goes = new ArrayList<>();
    goes.add(say("Name and title in the list of people, and when and why the person was away."));
    if (outlook.hasMail()) {
      goes.add(say("The mail address."));
    }
    outlook.accounts().forEach(account -> goes.add(accountGoes(account)));
    goes.add(Speech.say(FROM_TEXTS));
    if (outlook.named().ahead() > 0) {
      goes.add(
          say(
              "The name at %s to come; where the celebrant is missing then, the list of clashes says so.",
              Speech.count((int) outlook.named().ahead(), "Mass")));
    }
    if (outlook.named().patterns() > 0) {
      goes.add(
          say(
              "The celebrant of %s.",
              Speech.count((int) outlook.named().patterns(), "recurring Mass")));
    }
    if (outlook.askings() > 0) {
      goes.add(
          say(
              "%s asked for and not made yet; somebody else is to be asked.",
              Speech.sentence(Speech.count(outlook.askings(), "journey"))));
    }
    return goes;
  }

  private static List<String> stays(RemoveForGood.Outlook outlook) {
    List<String> stays = new ArrayList<>();
    if (outlook.named().past() > 0) {
      stays.add(
          say(
              "%s of the past, with how many vested and what they wore; the name reads \"a person who was removed\".",
              Speech.sentence(Speech.count((int) outlook.named().past(), "Mass"))));
    }
    stays.add(say("What was carried and when, and what was changed, likewise without the name."));
    return stays;
  }

  private static String accountGoes(ForgetUser.Account account) {
    return say("The account %s: sessions end at once, on every device.", account.login());
  }
}
