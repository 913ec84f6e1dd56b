package vestiary.reservation;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.EveryCluster;

/**
 * Has those who wait told within a few minutes, whatever it was that made something free: what is
 * given up on a page is told at once.
 */
@ApplicationScoped
class TellJobs {

  private static final Duration LOOK_AGAIN = Duration.ofMinutes(5);

  private final EveryCluster clusters;
  private final TellWaiting waiting;
  private final boolean isOn;

  TellJobs(
      EveryCluster clusters,
      TellWaiting waiting,
      @ConfigProperty(name = "vestiary.tidying") boolean isOn) {
    this.clusters = clusters;
    this.waiting = waiting;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> everyFewMinutes() {
    return Tasks.recurring("tell who waits", FixedDelay.of(LOOK_AGAIN))
        .execute(
            (job, context) -> {
              if (isOn) {
                everywhere();
              }
            });
  }

  /** In every cluster. */
  void everywhere() {
    clusters.each(waiting::look);
  }
}
