package vestiary.mail;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.reactive.ReactiveMailer;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Sends mails of plain text, where {@code QUARKUS_MAILER_HOST} names a mail server. */
@ApplicationScoped
public class MailServer {

  /** What application.properties says while nobody has named one. */
  private static final String OFF = "off";

  private static final Duration PATIENCE = Duration.ofSeconds(10);

  private final ReactiveMailer mailer;
  private final String server;

  MailServer(ReactiveMailer mailer, @ConfigProperty(name = "quarkus.mailer.host") String server) {
    this.mailer = mailer;
    this.server = server;
  }

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
    mailer.send(Mail.withText(to, subject, text)).await().atMost(PATIENCE);
  }
}
