package vestiary.mail;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;

/**
 * Hands letters to the mail server, one after the other. Before a try the letter is put off to the
 * next, under a lock: so no two copies of the server try at once, and one that dies loses nothing.
 * What it cannot promise: if it dies after the mail server has taken a letter and before that is
 * noted, the letter goes out once more. Both have the same Message-ID (RFC 5322, 3.6.4), by which
 * mail programs may show them as one.
 */
@ApplicationScoped
public class Postman {

  private static final Logger LOG = Logger.getLogger(Postman.class);

  /** So that one cluster's letters do not hold up all others. */
  private static final int AT_ONCE = 50;

  /** In a year whoever plans a feast looks at how it was done (common practice, no source). */
  private static final Duration SENT_KEPT = Duration.ofDays(366);

  private static final Duration FAILED_KEPT = Duration.ofDays(30);

  private final LetterRows letters;
  private final MailServer server;
  private final ReaderAddresses addresses;
  private final DoorLinks doors;
  private final Clock clock;

  Postman(
      LetterRows letters,
      MailServer server,
      ReaderAddresses addresses,
      DoorLinks doors,
      Clock clock) {
    this.doors = doors;
    this.letters = letters;
    this.server = server;
    this.addresses = addresses;
    this.clock = clock;
  }

  private record Due(UUID id, Optional<MailServer.Sending> sending) {}

  /**
   * In the present cluster, sends what is due. No connection is held while a mail leaves.
   *
   * @return how many were tried
   */
  public int deliver() {
    int tried = 0;
    while (server.isOn() && tried < AT_ONCE) {
      Optional<Due> due = QuarkusTransaction.requiringNew().call(this::claim);
      if (due.isEmpty()) {
        break;
      }
      due.get().sending().ifPresent(sending -> attempt(due.get().id(), sending));
      tried++;
    }
    return tried;
  }

  /** Forgets what is kept long enough. */
  public void tidy() {
    Instant now = clock.instant();
    QuarkusTransaction.requiringNew()
        .run(() -> letters.tidy(now.minus(SENT_KEPT), now.minus(FAILED_KEPT)));
  }

  private Optional<Due> claim() {
    Instant now = clock.instant();
    return letters.findDueLocked(now).map(row -> new Due(row.id, claim(row, now)));
  }

  /**
   * What is of no use any more is dropped; what somebody may mend is said on the page of letters.
   */
  private Optional<MailServer.Sending> claim(LetterRow row, Instant now) {
    Optional<String> plain = row.isOver(now) ? Optional.empty() : plain(row);
    if (plain.isEmpty()) {
      LOG.infof("Letter %s is of no use any more and was dropped unsent.", row.id);
      letters.delete(row);
      return Optional.empty();
    }
    row.tries++;
    row.nextAt = now.plus(Pauses.after(row.tries));
    Optional<String> address = addresses.find(row.reader);
    if (address.isEmpty()) {
      row.end(LetterState.REFUSED, now, "No mail address is kept for them.");
    }
    return address.map(
        to ->
            new MailServer.Sending(
                row.id, to, row.subject, plain.get(), row.html, row.stopLink, row.language));
  }

  private Optional<String> plain(LetterRow row) {
    return row.toKind() == LetterKind.PASSWORD
        ? doors.make(row.reader).map(link -> row.plain.replace(Letter.LINK, link))
        : Optional.of(row.plain);
  }

  private void attempt(UUID id, MailServer.Sending sending) {
    Handed handed = server.hand(sending);
    QuarkusTransaction.requiringNew()
        .run(() -> Optional.ofNullable(letters.findById(id)).ifPresent(row -> note(row, handed)));
  }

  private void note(LetterRow row, Handed handed) {
    Instant now = clock.instant();
    if (handed instanceof Handed.Taken) {
      row.end(LetterState.SENT, now, "");
      row.empty();
    } else if (handed instanceof Handed.Refused refused) {
      row.end(LetterState.REFUSED, now, refused.answer());
      LOG.warnf("Letter %s was refused by the mail server.", row.id);
    } else if (handed instanceof Handed.NotNow waits) {
      row.answer = waits.answer();
      LOG.infof("Letter %s waits after %d tries: %s", row.id, row.tries, waits.answer());
      if (now.isAfter(row.madeAt.plus(Pauses.LONGEST_WAY))) {
        row.end(LetterState.GIVEN_UP, now, waits.answer());
        LOG.warnf("Letter %s was given up after %d tries.", row.id, row.tries);
      }
    }
  }
}
