package vestiary.mail;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;

/**
 * Keeps letters until they are sent. One is entered in the transaction of what it tells: if that
 * comes to nothing, nobody is told of it, and once it stands the letter is not lost.
 */
@ApplicationScoped
public class Outbox {

  private final LetterRows letters;
  private final CurrentCluster cluster;
  private final Clock clock;

  Outbox(LetterRows letters, CurrentCluster cluster, Clock clock) {
    this.letters = letters;
    this.cluster = cluster;
    this.clock = clock;
  }

  /** A link that stops letters, to stand in the one that is being written. */
  public StopLink stopLink(String publicAddress) {
    Secret secret = Secret.fresh(cluster.id());
    return new StopLink(publicAddress + secret.text(), secret.fingerprint());
  }

  /**
   * Enters a letter, to be sent within a minute.
   *
   * @return whether it was; not if there is one of the same already
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public boolean enter(Letter letter) {
    if (letters.isThere(letter.once())) {
      return false;
    }
    Instant now = clock.instant();
    LetterRow row = new LetterRow();
    row.reader = letter.reader();
    row.kind = letter.kind().id();
    row.once = letter.once();
    row.language = letter.language();
    row.subject = letter.subject();
    row.plain = letter.plain();
    row.html = letter.html();
    row.stopLink = letter.stop().address();
    row.fingerprint = letter.stop().fingerprint();
    row.madeAt = now;
    row.nextAt = now;
    row.goodUntil = letter.goodFor().isZero() ? null : now.plus(letter.goodFor());
    letters.persistAndFlush(row);
    return true;
  }

  /**
   * Enters a letter in the place of those of its kind to the same reader that have not left, as
   * whoever asks again for a new password wants one mail.
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void enterAlone(Letter letter) {
    letters.delete(
        "reader = ?1 and kind = ?2 and state <> 'sent'", letter.reader(), letter.kind().id());
    enter(letter);
  }

  /** Whether one of the same is there. */
  @Transactional
  public boolean has(String once) {
    return letters.isThere(once);
  }
}
