package vestiary.users;

import jakarta.annotation.PreDestroy;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import vestiary.access.CurrentCluster;
import vestiary.mail.MailServer;
import vestiary.problem.Refused;

/**
 * Mails a link to whoever forgot the password. Whether anybody of that name is there is neither
 * said nor to be told by the time that the answer takes: everything that depends on it is done
 * after the answer, one after the other.
 *
 * <p>Source: OWASP Forgot Password Cheat Sheet.
 */
@ApplicationScoped
class RecoverByMail {

  /** What is asked for beyond this is dropped; the throttle leaves room for nobody to notice. */
  private static final int MOST_WAITING = 500;

  private final RecoveryLetter letter;
  private final MailServer mail;
  private final Tries tries;
  private final CurrentCluster current;
  private final ExecutorService afterwards =
      new ThreadPoolExecutor(
          0,
          1,
          1,
          TimeUnit.MINUTES,
          new ArrayBlockingQueue<>(MOST_WAITING),
          work -> new Thread(work, "recovery"),
          new ThreadPoolExecutor.DiscardPolicy());

  RecoverByMail(RecoveryLetter letter, MailServer mail, Tries tries, CurrentCluster current) {
    this.letter = letter;
    this.mail = mail;
    this.tries = tries;
    this.current = current;
  }

  /** Whether a mail server is named. */
  boolean isOn() {
    return mail.isOn();
  }

  /**
   * Has a link mailed, if somebody of that name has an address that was proven.
   *
   * @param from where the request comes from
   * @throws Refused after too many for that name or from there, whether or not anybody has it
   */
  void ask(String login, String from) {
    String name = SignIn.cut(login.strip());
    Tries.Try tried = new Tries.Try(Tries.Kind.RECOVERY, name, from, "");
    tries.refuseIfTooMany(tried);
    tries.note(tried);
    UUID cluster = current.id();
    afterwards.execute(() -> letter.write(cluster, name));
  }

  @PreDestroy
  void finish() {
    afterwards.shutdown();
  }
}
