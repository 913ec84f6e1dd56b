package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Duration;
import java.util.Locale;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.access.CurrentCluster;
import vestiary.mail.Letter;
import vestiary.mail.LetterKind;
import vestiary.mail.Outbox;
import vestiary.mail.ReaderLanguages;
import vestiary.mail.StopLink;
import vestiary.web.Speech;

/**
 * The mail that leads to a new password. It is kept without its link, which is made while it
 * leaves, so that nothing that opens a door can be read before it is mailed or after it has ended.
 */
@ApplicationScoped
class RecoveryLetter {

  /** Whoever waits longer asks again (common practice, no source). */
  private static final Duration OF_USE = Duration.ofDays(1);

  private static final Logger LOG = Logger.getLogger(RecoveryLetter.class);

  private final UserRows users;
  private final KeepUserMail mails;
  private final ReaderLanguages languages;
  private final Outbox outbox;
  private final CurrentCluster current;

  RecoveryLetter(
      UserRows users,
      KeepUserMail mails,
      ReaderLanguages languages,
      Outbox outbox,
      CurrentCluster current) {
    this.users = users;
    this.mails = mails;
    this.languages = languages;
    this.outbox = outbox;
    this.current = current;
  }

  /** Writes to whoever signs in by that name; to nobody if there is none, or no proven address. */
  @ActivateRequestContext
  void write(UUID cluster, String login) {
    current.assign(cluster);
    try {
      QuarkusTransaction.requiringNew()
          .run(
              () ->
                  users
                      .findByLogin(login)
                      .filter(user -> mails.findProven(user.id).isPresent())
                      .ifPresent(user -> outbox.enterAlone(letter(user))));
    } catch (RuntimeException e) {
      // Its message may hold the name, which belongs into no log.
      LOG.warnf(
          "A mail with a link for a new password was not written: %s", e.getClass().getName());
    }
  }

  private Letter letter(UserRow user) {
    Locale language = languages.language(user.personId == null ? user.id : user.personId);
    return new Letter(
        user.id,
        LetterKind.PASSWORD,
        "password " + UUID.randomUUID(),
        language.toLanguageTag(),
        Speech.in(language, () -> say("A new password for Vestiary")),
        Speech.in(language, () -> text(user.login)),
        "",
        StopLink.NONE,
        OF_USE);
  }

  private static String text(String login) {
    return String.join(
        "\n",
        say(
            "Somebody, you we hope, asked for a new password for the name %s. Open this within half an hour after it was mailed to choose it:",
            login),
        Letter.LINK,
        "",
        say("If it was not you, do nothing: your password stays as it is."),
        "");
  }
}
