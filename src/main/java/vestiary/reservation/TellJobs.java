package vestiary.reservation;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.Rounds;

/**
 * Has those who wait told within a few minutes, whatever it was that made something free: what is
 * given up on a page is told at once.
 */
@ApplicationScoped
class TellJobs {

  private static final Duration LOOK_AGAIN = Duration.ofMinutes(5);

  private final Rounds rounds;
  private final TellWaiting waiting;
  private final boolean isOn;

  TellJobs(
      Rounds rounds, TellWaiting waiting, @ConfigProperty(name = "vestiary.tidying") boolean isOn) {
    this.rounds = rounds;
    this.waiting = waiting;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> everyFewMinutes() {
    return rounds.every(LOOK_AGAIN, "tell who waits", isOn, waiting::look);
  }
}
