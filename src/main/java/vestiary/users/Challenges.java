package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;

/**
 * What a device is to sign: random, kept by fingerprint, good for five minutes and one answer, so
 * that no answer can be sent twice and none made in advance.
 *
 * <p>Source: W3C Web Authentication 13.4.3, Cryptographic Challenges.
 */
@ApplicationScoped
class Challenges {

  static final Duration GOOD_FOR = Duration.ofMinutes(5);

  private final ChallengeRows rows;
  private final CurrentCluster current;
  private final Clock clock;

  Challenges(ChallengeRows rows, CurrentCluster current, Clock clock) {
    this.rows = rows;
    this.current = current;
    this.clock = clock;
  }

  /** A new one for somebody who signs in. */
  Secret toSignIn() {
    return make(null);
  }

  /** A new one for a user who adds a device. */
  Secret toAdd(UUID user) {
    return make(user);
  }

  /** Uses one up that was answered by somebody who signs in; whether it was good. */
  boolean answeredToSignIn(Secret challenge) {
    return useUp(challenge, null);
  }

  /** Uses one up that was answered by a user who adds a device; whether it was good, and theirs. */
  boolean answeredToAdd(Secret challenge, UUID user) {
    return useUp(challenge, user);
  }

  private Secret make(UUID user) {
    Secret challenge = Secret.fresh(current.id());
    Instant now = clock.instant();
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              rows.forgetEnded(now);
              ChallengeRow row = new ChallengeRow();
              row.userId = user;
              row.fingerprint = challenge.fingerprint();
              row.endsAt = now.plus(GOOD_FOR);
              rows.persist(row);
            });
    return challenge;
  }

  private boolean useUp(Secret challenge, UUID user) {
    return Optional.of(challenge)
        .filter(secret -> secret.cluster().equals(current.id()))
        .map(
            secret ->
                QuarkusTransaction.requiringNew()
                    .call(() -> rows.useUp(secret.fingerprint(), user, clock.instant())))
        .orElse(false);
  }
}
