package vestiary.erasure;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import vestiary.users.ForgetUser;
import vestiary.web.English;
import vestiary.web.Frames;
import vestiary.web.Link;

/** Says what goes and what stays. */
@ApplicationScoped
class ErasureSheet {

  private static final String FROM_TEXTS =
      "The name wherever it stands in notes, intentions, plans, answers and in the history of changes.";

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
        new Link("Leave it as it is", address));
  }

  @Transactional
  ErasureView user(String id, String problem) {
    ForgetUser.Account account = users.get(id);
    String address = "/users/" + account.id();
    return new ErasureView(
        frames.of("settings", address + "/erasure"),
        account.name(),
        problem,
        List.of(accountGoes(account), FROM_TEXTS),
        List.of(
            "What was changed stays in the history, as changed by a person who was removed.",
            "Whoever of that name is in the list of people stays there; remove them there."),
        address + "/erasure",
        new Link("Leave it as it is", address));
  }

  private static List<String> goes(RemoveForGood.Outlook outlook) {
    List<String> goes = new ArrayList<>();
    goes.add("Name and title in the list of people, and when and why the person was away.");
    if (outlook.hasMail()) {
      goes.add("The mail address.");
    }
    outlook.accounts().forEach(account -> goes.add(accountGoes(account)));
    goes.add(FROM_TEXTS);
    if (outlook.named().ahead() > 0) {
      goes.add(
          "The name at %s to come; where the celebrant is missing then, the list of clashes says so."
              .formatted(English.count((int) outlook.named().ahead(), "Mass")));
    }
    if (outlook.named().patterns() > 0) {
      goes.add(
          "The celebrant of %s."
              .formatted(English.count((int) outlook.named().patterns(), "recurring Mass")));
    }
    if (outlook.askings() > 0) {
      goes.add(
          "%s not made yet; somebody else is to be asked."
              .formatted(
                  English.sentence(English.count(outlook.askings(), "journey"))
                      + " asked for and"));
    }
    return goes;
  }

  private static List<String> stays(RemoveForGood.Outlook outlook) {
    List<String> stays = new ArrayList<>();
    if (outlook.named().past() > 0) {
      stays.add(
          "%s, with how many vested and what they wore; the name reads \"a person who was removed\"."
              .formatted(
                  English.sentence(English.count((int) outlook.named().past(), "Mass"))
                      + " of the past"));
    }
    stays.add("What was carried and when, and what was changed, likewise without the name.");
    return stays;
  }

  private static String accountGoes(ForgetUser.Account account) {
    return "The account %s: sessions end at once, on every device.".formatted(account.login());
  }
}
