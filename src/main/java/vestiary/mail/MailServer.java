package vestiary.mail;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.reactive.ReactiveMailer;
import io.smallrye.mutiny.Uni;
import io.vertx.core.Context;
import io.vertx.core.Vertx;
import io.vertx.ext.mail.SMTPException;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.web.Speech;

/** Sends mails, where {@code QUARKUS_MAILER_HOST} names a mail server. */
@ApplicationScoped
public class MailServer {

  /** What application.properties says while nobody has named one. */
  private static final String OFF = "off";

  private static final Duration PATIENCE = Duration.ofSeconds(10);

  /** RFC 5321, 4.2.3: what a server says of an address or a letter that it does not take. */
  private static final int MAILBOX_FROM = 550;

  private static final int MAILBOX_TO = 556;

  private static final int LONGEST_ANSWER = 300;

  private final ReactiveMailer mailer;
  private final Context context;
  private final String server;
  private final String host;

  MailServer(
      ReactiveMailer mailer,
      Vertx vertx,
      @ConfigProperty(name = "quarkus.mailer.host") String server,
      @ConfigProperty(name = "quarkus.mailer.from") String from) {
    this.mailer = mailer;
    this.context = vertx.getOrCreateContext();
    this.server = server;
    this.host = from.replaceFirst(".*@", "").replaceAll("[^A-Za-z0-9.-]", "");
  }

  /**
   * A letter with its address.
   *
   * @param id by which mail programs know it again
   * @param html empty for none
   * @param stopLink empty for none
   * @param language BCP 47
   */
  record Sending(
      UUID id,
      String to,
      String subject,
      String plain,
      String html,
      String stopLink,
      String language) {}

  /** Whether one is named. */
  public boolean isOn() {
    return !server.equals(OFF) && !server.isBlank();
  }

  /**
   * Sends one mail and waits until it has left, ten seconds at most.
   *
   * @throws RuntimeException of the mailer, if it did not leave
   */
  public void send(String to, String subject, String text) {
    leave(Mail.withText(to, subject, text));
  }

  /** Hands over a letter and tells what the server said, ten seconds being waited at most. */
  Handed hand(Sending letter) {
    try {
      leave(mail(letter));
      return new Handed.Taken();
    } catch (RuntimeException failure) {
      Optional<SMTPException> said = findAnswer(failure);
      String answer = answer(said.isPresent() ? said.get() : failure);
      return said.filter(MailServer::isForGood).isPresent()
          ? new Handed.Refused(answer)
          : new Handed.NotNow(answer);
    }
  }

  /**
   * All mails are sent from one place of the event loop: the mailer's connections are lost sight of
   * when threads that follow one another hand them back and take them at the same moment.
   */
  private void leave(Mail mail) {
    Uni.createFrom()
        .<Void>emitter(
            left ->
                context.runOnContext(
                    go -> mailer.send(mail).subscribe().with(left::complete, left::fail)))
        .await()
        .atMost(PATIENCE);
  }

  /**
   * The links by which a mail program offers to stop letters by one press are of use only by https.
   *
   * <p>Source: RFC 8058, 3.1; RFC 2369, 3.2.
   */
  private Mail mail(Sending letter) {
    Mail mail = Mail.withText(letter.to(), letter.subject(), letter.plain());
    if (!letter.html().isEmpty()) {
      mail.setHtml(letter.html());
    }
    mail.addHeader("Message-ID", "<%s@%s>".formatted(letter.id(), host));
    mail.addHeader("Auto-Submitted", "auto-generated");
    mail.addHeader("Content-Language", letter.language());
    if (letter.stopLink().startsWith("https://")) {
      mail.addHeader("List-Unsubscribe", "<%s>".formatted(letter.stopLink()));
      mail.addHeader("List-Unsubscribe-Post", "List-Unsubscribe=One-Click");
    }
    return mail;
  }

  /** What is said of a password or of the connection is our trouble, and passes. */
  private static boolean isForGood(SMTPException said) {
    return said.getReplyCode() >= MAILBOX_FROM && said.getReplyCode() <= MAILBOX_TO;
  }

  private static Optional<SMTPException> findAnswer(Throwable failure) {
    for (Throwable one = failure; one != null; one = one.getCause()) {
      if (one instanceof SMTPException said) {
        return Optional.of(said);
      }
    }
    return Optional.empty();
  }

  /** Mail servers repeat whom they do not know, and that is nothing for a log or a list. */
  private static String answer(Throwable failure) {
    String said =
        Optional.ofNullable(failure.getMessage())
            .orElse(Speech.word("no answer within ten seconds"))
            .replaceAll("\\S+@\\S+", "(an address)")
            .replaceAll("\\s+", " ")
            .strip();
    return said.substring(0, Math.min(said.length(), LONGEST_ANSWER));
  }
}
