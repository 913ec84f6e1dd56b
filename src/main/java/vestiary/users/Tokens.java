package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.function.Consumer;
import vestiary.access.CurrentCluster;
import vestiary.access.Secret;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Lets a user's programs in. A token can do no more than its user can, whatever changes. */
@ApplicationScoped
class Tokens {

  static final int LONGEST_DAYS = 366;

  private static final Duration FEEDS_ARE_GOOD_FOR = Duration.ofDays(3_650);

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
    return keep(user, name, row -> row.looksOnly = request.looksOnly(), Duration.ofDays(days));
  }

  /**
   * Makes the key of a feed, which reads only and opens nothing but feeds; it is shown once. It is
   * good for ten years: a calendar that ends by itself is missed by nobody until it is needed.
   *
   * @param name what it is for, as typed
   * @throws Refused if the name is missing
   */
  @Transactional
  Secret makeFeed(UUID user, String name) {
    Asked asked = new Asked();
    String given = asked.needed("feed", name, LONGEST_NAME);
    asked.refuseIfFaulty();
    return keep(
        user,
        given,
        row -> {
          row.looksOnly = true;
          row.feed = true;
        },
        FEEDS_ARE_GOOD_FOR);
  }

  private Secret keep(UUID user, String name, Consumer<TokenRow> kind, Duration length) {
    Secret secret = Secret.fresh(current.id());
    Instant now = clock.instant();
    TokenRow row = new TokenRow();
    row.userId = user;
    row.name = name;
    kind.accept(row);
    row.fingerprint = secret.fingerprint();
    row.madeAt = now;
    row.endsAt = now.plus(length);
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
