package vestiary.sending;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.Rounds;

/**
 * Has what is overdue asked for once a day, by one of the copies of the server; it looks every
 * hour, so that a server that is switched off at night misses no day.
 */
@ApplicationScoped
class ChaseJobs {

  private static final Duration LOOK_AGAIN = Duration.ofHours(1);

  private final Rounds rounds;
  private final ChaseOverdue chase;
  private final boolean isOn;

  ChaseJobs(
      Rounds rounds, ChaseOverdue chase, @ConfigProperty(name = "vestiary.chasing") boolean isOn) {
    this.rounds = rounds;
    this.chase = chase;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> hourly() {
    return rounds.every(LOOK_AGAIN, "chase-overdue", isOn, chase::today);
  }
}
