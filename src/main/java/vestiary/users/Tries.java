package vestiary.users;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import vestiary.calendar.Term;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Counts what was tried in vain, in the database that all copies of the server share, and looks at
 * no more of it once there was too much: of one person at one address, of one address, of one
 * person from everywhere. Somebody who guesses elsewhere must not lock a person out of their own
 * desk at once, so the last bound is the widest; and a browser that its user came in by before is
 * counted alone, so that nobody beside them can keep them waiting.
 *
 * <p>Source: OWASP Authentication Cheat Sheet (login throttling); OWASP, "Slow Down Online Guessing
 * Attacks with Device Cookies". The numbers are our own.
 */
@ApplicationScoped
class Tries {

  private static final Duration REMEMBERED = Duration.ofMinutes(15);

  private final FailedSignInRows failed;
  private final Clock clock;

  Tries(FailedSignInRows failed, Clock clock) {
    this.failed = failed;
    this.clock = clock;
  }

  /** What can be tried, and how often in a quarter of an hour. */
  enum Kind implements Term {
    /** A password that was wrong. */
    PASSWORD(5, 40, 60),

    /** A link asked for by mail, counted whether or not one was sent. */
    RECOVERY(3, 20, 6),

    /** A mail to an address that is to be proven. */
    PROOF(5, 20, 5);

    private final int ofOneAtOneAddress;
    private final int ofAddress;
    private final int ofOne;

    Kind(int ofOneAtOneAddress, int ofAddress, int ofOne) {
      this.ofOneAtOneAddress = ofOneAtOneAddress;
      this.ofAddress = ofAddress;
      this.ofOne = ofOne;
    }
  }

  /**
   * One try.
   *
   * @param login whom it is about, as typed; small and capital letters count alike
   * @param address where the request comes from
   * @param device fingerprint of a browser that this person came in by before; empty for any other
   */
  record Try(Kind kind, String login, String address, String device) {
    Try {
      login = login.toLowerCase(Locale.ROOT);
    }
  }

  /**
   * Looks before anything else is looked at.
   *
   * @throws Refused if there were too many, with how long to wait
   */
  void refuseIfTooMany(Try one) {
    Instant since = clock.instant().minus(REMEMBERED);
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              refuse(failed.alike(one, since), one.kind().ofOneAtOneAddress);
              if (one.device().isEmpty()) {
                refuse(failed.ofAddress(one, since), one.kind().ofAddress);
                refuse(failed.ofLogin(one, since), one.kind().ofOne);
              }
            });
  }

  /** Notes one that failed, whatever becomes of the request. */
  void note(Try one) {
    QuarkusTransaction.requiringNew()
        .run(
            () -> {
              Instant now = clock.instant();
              FailedSignInRow row = new FailedSignInRow();
              row.kind = one.kind().id();
              row.login = one.login();
              row.address = one.address();
              row.device = one.device();
              row.at = now;
              failed.persist(row);
            });
  }

  /** Forgets those of somebody who has now come in. */
  void forget(Try one) {
    QuarkusTransaction.requiringNew().run(() -> failed.forget(one));
  }

  private void refuse(List<Instant> tries, int most) {
    if (tries.size() >= most) {
      Instant free = tries.get(tries.size() - most).plus(REMEMBERED);
      throw new Refused(new Refusal.TooOften(Duration.between(clock.instant(), free)));
    }
  }
}
