package vestiary.mail;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Which letters wait, failed and left, for whoever looks after the server. */
@ApplicationScoped
@Transactional
public class KeptLetters {

  private final LetterRows letters;
  private final Clock clock;

  KeptLetters(LetterRows letters, Clock clock) {
    this.letters = letters;
    this.clock = clock;
  }

  /** What has not left, by what became of it, then by the hour at which it was written. */
  public List<KeptLetter> unsent() {
    return letters.unsent().stream().map(KeptLetter::of).toList();
  }

  /** The last that left, the latest first. */
  public List<KeptLetter> sent(int most) {
    return letters.sent(most).stream().map(KeptLetter::of).toList();
  }

  public long countSentSince(Instant moment) {
    return letters.countSentSince(moment);
  }

  /** That of these; empty if none was entered, or it is forgotten. */
  public Optional<KeptLetter> find(String once) {
    return letters.findOnce(once).map(KeptLetter::of);
  }

  /** The one whose link for stopping that is, as far as it is still known. */
  public Optional<KeptLetter> findByLink(String fingerprint) {
    return letters.findByLink(fingerprint).map(KeptLetter::of);
  }

  /**
   * Has a letter tried once more, within a minute; it then has its days again.
   *
   * @throws Refused if there is none of that id, or it has left
   */
  public void tryNow(String id) {
    LetterRow row =
        Optional.ofNullable(letters.findById(Asked.id("letter", id)))
            .filter(one -> one.toState() != LetterState.SENT)
            .orElseThrow(() -> new Refused(new Refusal.NotThere("letter that has not left", id)));
    Instant now = clock.instant();
    row.state = LetterState.WAITING.id();
    row.endedAt = null;
    row.madeAt = now;
    row.nextAt = now;
    row.tries = 0;
  }

  /**
   * Takes a letter away that is not to be sent any more.
   *
   * @throws Refused if there is none of that id, or it has left
   */
  public void drop(String id) {
    if (letters.delete("id = ?1 and state <> 'sent'", Asked.id("letter", id)) == 0) {
      throw new Refused(new Refusal.NotThere("letter that has not left", id));
    }
  }
}
