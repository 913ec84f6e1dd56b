package vestiary.telling;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.EveryCluster;

/** Looks again and again whether letters are to be written. */
@ApplicationScoped
class TellingJobs {

  private static final Duration WEEK_LOOK_AGAIN = Duration.ofMinutes(10);
  private static final Duration CHANGES_LOOK_AGAIN = Duration.ofMinutes(1);

  private final EveryCluster clusters;
  private final WriteWeekLetters week;
  private final TellChanges changes;
  private final boolean isOn;

  TellingJobs(
      EveryCluster clusters,
      WriteWeekLetters week,
      TellChanges changes,
      @ConfigProperty(name = "vestiary.telling") boolean isOn) {
    this.clusters = clusters;
    this.week = week;
    this.changes = changes;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> weekly() {
    return Tasks.recurring("write letters of the week", FixedDelay.of(WEEK_LOOK_AGAIN))
        .execute((job, context) -> each(week::look));
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> everyMinute() {
    return Tasks.recurring("tell changes", FixedDelay.of(CHANGES_LOOK_AGAIN))
        .execute((job, context) -> each(changes::look));
  }

  private void each(Runnable work) {
    if (isOn) {
      clusters.each(work);
    }
  }
}
