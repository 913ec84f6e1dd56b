package vestiary.users;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;

/** Forgets sessions that have ended, and sign-ins that failed. */
@ApplicationScoped
public class EndedTraces {

  private static final String ENDED = "endsAt < ?1";
  private static final String FAILED = "at < ?1";

  private final SessionRows sessions;
  private final FailedSignInRows failed;

  EndedTraces(SessionRows sessions, FailedSignInRows failed) {
    this.sessions = sessions;
    this.failed = failed;
  }

  /** How many sessions ended before that moment. */
  public long countSessions(Instant before) {
    return sessions.count(ENDED, before);
  }

  /** How many sign-ins failed before that moment. */
  public long countTries(Instant before) {
    return failed.count(FAILED, before);
  }

  @Transactional
  public void forgetSessions(Instant before) {
    sessions.delete(ENDED, before);
  }

  @Transactional
  public void forgetTries(Instant before) {
    failed.delete(FAILED, before);
  }
}
