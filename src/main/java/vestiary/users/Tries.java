package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Counts sign-ins that failed, in the database that all copies of the server share, and looks at no
 * more of them once there were too many: for one person at one address, for one address, for one
 * person from everywhere. Somebody who guesses elsewhere must not lock a person out of their own
 * desk at once, so the last bound is the widest.
 */
@ApplicationScoped
class Tries {

  private static final Duration REMEMBERED = Duration.ofMinutes(15);
  private static final int MOST_OF_ONE_AT_ONE_ADDRESS = 5;
  private static final int MOST_OF_ADDRESS = 40;
  private static final int MOST_OF_ONE = 60;

  private final FailedSignInRows failed;
  private final Clock clock;

  Tries(FailedSignInRows failed, Clock clock) {
    this.failed = failed;
    this.clock = clock;
  }

  /**
   * Looks before the password is looked at.
   *
   * @throws Refused if there were too many, with how long to wait
   */
  void refuseIfTooMany(String login, String address) {
    Instant since = clock.instant().minus(REMEMBERED);
    String name = small(login);
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              refuse(failed.of(name, address, since), MOST_OF_ONE_AT_ONE_ADDRESS);
              refuse(failed.ofAddress(address, since), MOST_OF_ADDRESS);
              refuse(failed.ofLogin(name, since), MOST_OF_ONE);
            });
  }

  /** Notes one that failed, whatever becomes of the request. */
  void note(String login, String address) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              Instant now = clock.instant();
              FailedSignInRow row = new FailedSignInRow();
              row.login = small(login);
              row.address = address;
              row.at = now;
              failed.persist(row);
            });
  }

  /** Forgets those of somebody who has now come in. */
  void forget(String login, String address) {
    QuarkusTransaction.requiringNew().run(() -> failed.forget(small(login), address));
  }

  private void refuse(List<Instant> tries, int most) {
    if (tries.size() >= most) {
      Instant free = tries.get(tries.size() - most).plus(REMEMBERED);
      throw new Refused(new Refusal.TooOften(Duration.between(clock.instant(), free)));
    }
  }

  private static String small(String login) {
    return login.toLowerCase(Locale.ROOT);
  }
}
