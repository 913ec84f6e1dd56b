package vestiary.telling;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import vestiary.access.CurrentCluster;
import vestiary.access.LinksInLetters;
import vestiary.access.Secret;
import vestiary.mail.KeptLetter;
import vestiary.mail.KeptLetters;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Knows by which letter somebody comes who has not signed in. */
@ApplicationScoped
class StopLinks implements LinksInLetters {

  private final KeptLetters letters;
  private final CurrentCluster current;

  StopLinks(KeptLetters letters, CurrentCluster current) {
    this.letters = letters;
    this.current = current;
  }

  /** In a transaction of its own, since the cluster is as yet only claimed. */
  @Override
  public boolean isLink(Secret secret) {
    return QuarkusTransaction.requiringNew()
        .call(() -> letters.findByLink(secret.fingerprint()).isPresent());
  }

  /**
   * The letter that a link stands in.
   *
   * @throws Refused if there is none, or it is forgotten
   */
  KeptLetter get(String link) {
    Optional<KeptLetter> found =
        Secret.parse(link)
            .filter(secret -> secret.cluster().equals(current.id()))
            .flatMap(secret -> letters.findByLink(secret.fingerprint()));
    return found.orElseThrow(
        () ->
            new Refused(
                new Refusal.Beyond(
                    say(
                        "This link is good for a year after its letter, and is not known any more. The last letter that you got has one that is."))));
  }
}
