package vestiary.retention;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.Rounds;

/**
 * Has every cluster tidied once a day of its own, by one of the copies of the server. It looks
 * every hour, so that a server that is switched off at night misses no day.
 */
@ApplicationScoped
class TidyJobs {

  private static final Duration LOOK_AGAIN = Duration.ofHours(1);

  private final Rounds rounds;
  private final TidyUp tidy;
  private final boolean isOn;

  TidyJobs(Rounds rounds, TidyUp tidy, @ConfigProperty(name = "vestiary.tidying") boolean isOn) {
    this.rounds = rounds;
    this.tidy = tidy;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> hourly() {
    return rounds.every(LOOK_AGAIN, "tidy", isOn, tidy::today);
  }
}
