package vestiary.users;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Lets in whoever holds a device that was added.
 *
 * <p>Source: W3C Web Authentication 7.2, Verifying an Authentication Assertion.
 */
@ApplicationScoped
class EnterByPasskey {

  private final PasskeyRows passkeys;
  private final Challenges challenges;
  private final PasskeyProof proof;
  private final CurrentCluster current;
  private final Clock clock;

  EnterByPasskey(
      PasskeyRows passkeys,
      Challenges challenges,
      PasskeyProof proof,
      CurrentCluster current,
      Clock clock) {
    this.passkeys = passkeys;
    this.challenges = challenges;
    this.proof = proof;
    this.current = current;
    this.clock = clock;
  }

  /** What the device is to sign. */
  PasskeyBody.ToSignIn begin() {
    return new PasskeyBody.ToSignIn(
        challenges.toSignIn().text(), proof.site(), Challenges.GOOD_FOR.toMillis());
  }

  /**
   * Whose device it is; the present cluster is theirs from then on.
   *
   * @throws Refused if the answer is not to what was asked, was given before, or is of no device
   *     that is known
   */
  UUID user(PasskeyBody.Answer answer) {
    Secret challenge = proof.challenge(answer.clientData());
    if (!challenges.answeredToSignIn(challenge)) {
      throw PasskeyProof.tooOld();
    }
    UserHandle handle =
        UserHandle.parse(answer.user() == null ? "" : answer.user())
            .orElseThrow(EnterByPasskey::unknown);
    UUID before = current.id();
    current.assign(handle.cluster());
    try {
      return QuarkusTransaction.requiringNew().call(() -> user(handle, challenge, answer));
    } catch (Refused refused) {
      current.assign(before);
      throw refused;
    }
  }

  private UUID user(UserHandle handle, Secret challenge, PasskeyBody.Answer answer) {
    PasskeyRow key =
        passkeys
            .findByCredential(answer.credential() == null ? "" : answer.credential())
            .filter(row -> row.userId.equals(handle.user()))
            .orElseThrow(EnterByPasskey::unknown);
    key.counter = proof.counter(key, challenge, answer);
    key.usedAt = clock.instant();
    return key.userId;
  }

  private static Refused unknown() {
    return new Refused(
        Refusal.Unfit.of(
            "device",
            say(
                "This device is not known here. Sign in with name and password, and add it under your own name.")));
  }
}
