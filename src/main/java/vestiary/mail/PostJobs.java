package vestiary.mail;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.EveryCluster;

/** Has letters sent twice a minute, and old ones forgotten once a day. */
@ApplicationScoped
class PostJobs {

  private static final Duration LOOK_AGAIN = Duration.ofSeconds(30);
  private static final Duration TIDY_AGAIN = Duration.ofDays(1);

  private final EveryCluster clusters;
  private final Postman postman;
  private final boolean isOn;

  PostJobs(
      EveryCluster clusters,
      Postman postman,
      @ConfigProperty(name = "vestiary.telling") boolean isOn) {
    this.clusters = clusters;
    this.postman = postman;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> rounds() {
    return Tasks.recurring("send letters", FixedDelay.of(LOOK_AGAIN))
        .execute((job, context) -> each(postman::deliver));
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> daily() {
    return Tasks.recurring("forget letters", FixedDelay.of(TIDY_AGAIN))
        .execute((job, context) -> each(postman::tidy));
  }

  private void each(Runnable work) {
    if (isOn) {
      clusters.each(work);
    }
  }
}
