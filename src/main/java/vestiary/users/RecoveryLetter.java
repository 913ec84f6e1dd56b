package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.context.control.ActivateRequestContext;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import vestiary.access.CurrentCluster;
import vestiary.mail.MailServer;

/** The mail that leads to a new password: good once and for half an hour. */
@ApplicationScoped
class RecoveryLetter {

  static final Duration LINK_GOOD_FOR = Duration.ofMinutes(30);

  private static final Logger LOG = Logger.getLogger(RecoveryLetter.class);

  private final UserRows users;
  private final KeepUserMail mails;
  private final ChoosePassword choose;
  private final MailServer mail;
  private final PublicAddress here;
  private final CurrentCluster current;

  RecoveryLetter(
      UserRows users,
      KeepUserMail mails,
      ChoosePassword choose,
      MailServer mail,
      PublicAddress here,
      CurrentCluster current) {
    this.users = users;
    this.mails = mails;
    this.choose = choose;
    this.mail = mail;
    this.here = here;
    this.current = current;
  }

  private record Letter(String to, String login, String link) {}

  /** Writes to whoever signs in by that name; to nobody if there is none, or no proven address. */
  @ActivateRequestContext
  void write(UUID cluster, String login) {
    current.assign(cluster);
    try {
      QuarkusTransaction.requiringNew().call(() -> find(login)).ifPresent(this::send);
    } catch (RuntimeException e) {
      // Its message may hold the address, which belongs into no log.
      LOG.warnf("A mail with a link for a new password did not leave: %s", e.getClass().getName());
    }
  }

  private Optional<Letter> find(String login) {
    return users
        .findByLogin(login)
        .flatMap(
            user -> mails.findProven(user.id).map(to -> new Letter(to, user.login, link(user.id))));
  }

  private String link(UUID user) {
    return here.of("/welcome/" + choose.link(user, LINK_GOOD_FOR).text());
  }

  private void send(Letter letter) {
    mail.send(
        letter.to(),
        "A new password for Vestiary",
        """
        Somebody, you we hope, asked for a new password for the name %s. Open this within half an hour to choose it:
        %s

        If it was not you, do nothing: your password stays as it is.
        """
            .formatted(letter.login(), letter.link()));
  }
}
