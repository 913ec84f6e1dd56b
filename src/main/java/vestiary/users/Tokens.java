package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Lets a user's programs in. A token can do no more than its user can, whatever changes. */
@ApplicationScoped
class Tokens {

  static final int LONGEST_DAYS = 366;

  private static final int USUAL_DAYS = 90;
  private static final int LONGEST_NAME = 100;

  private final TokenRows tokens;
  private final CurrentCluster current;
  private final Clock clock;

  Tokens(TokenRows tokens, CurrentCluster current, Clock clock) {
    this.tokens = tokens;
    this.current = current;
    this.clock = clock;
  }

  /**
   * What is asked for.
   *
   * @param name what the token is for
   * @param days how long it is good, as typed; empty for 90
   * @param looksOnly whether it may read alone
   */
  record Request(String name, String days, boolean looksOnly) {}

  /**
   * Makes one; it is shown to its user once.
   *
   * @throws Refused if the name is missing or the days are none
   */
  @Transactional
  Secret make(UUID user, Request request) {
    Asked asked = new Asked();
    String name = asked.needed("name", request.name(), LONGEST_NAME);
    int days =
        asked.whole("days", asked.number("days", request.days()), 1, LONGEST_DAYS, USUAL_DAYS);
    asked.refuseIfFaulty();
    Secret secret = Secret.fresh(current.id());
    Instant now = clock.instant();
    TokenRow row = new TokenRow();
    row.userId = user;
    row.name = name;
    row.looksOnly = request.looksOnly();
    row.fingerprint = secret.fingerprint();
    row.madeAt = now;
    row.endsAt = now.plus(Duration.ofDays(days));
    tokens.persist(row);
    return secret;
  }

  /**
   * Ends one.
   *
   * @throws Refused if the user has none such
   */
  @Transactional
  void end(UUID user, String id) {
    if (!tokens.end(Asked.id("token", id), user)) {
      throw new Refused(new Refusal.NotThere("token", id));
    }
  }
}
