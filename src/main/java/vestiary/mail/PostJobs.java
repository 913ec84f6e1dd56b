package vestiary.mail;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.Rounds;

/** Has letters sent twice a minute, and old ones forgotten once a day. */
@ApplicationScoped
class PostJobs {

  private static final Duration LOOK_AGAIN = Duration.ofSeconds(30);
  private static final Duration TIDY_AGAIN = Duration.ofDays(1);

  private final Rounds rounds;
  private final Postman postman;
  private final boolean isOn;

  PostJobs(
      Rounds rounds, Postman postman, @ConfigProperty(name = "vestiary.telling") boolean isOn) {
    this.rounds = rounds;
    this.postman = postman;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> twiceAMinute() {
    return rounds.every(LOOK_AGAIN, "send letters", isOn, postman::deliver);
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> daily() {
    return rounds.every(TIDY_AGAIN, "forget letters", isOn, postman::tidy);
  }
}
