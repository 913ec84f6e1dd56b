package vestiary.access;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;

/** Makes jobs that go round all clusters again and again, by one copy of the server at a time. */
@ApplicationScoped
public class Rounds {

  private final EveryCluster clusters;

  Rounds(EveryCluster clusters) {
    this.clusters = clusters;
  }

  /**
   * A job for the queue.
   *
   * @param name by which the queue knows it, whatever release wrote it there
   * @param pause between the end of one round and the next
   * @param isOn as the server is configured; where it is off, rounds are made and nothing is done
   * @param work in one cluster
   */
  public RecurringTask<Void> every(Duration pause, String name, boolean isOn, Runnable work) {
    return Tasks.recurring(name, FixedDelay.of(pause))
        .execute(
            (job, context) -> {
              if (isOn) {
                clusters.each(work);
              }
            });
  }
}
