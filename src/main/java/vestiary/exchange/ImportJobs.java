package vestiary.exchange;

import static vestiary.web.Speech.word;

import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import com.github.kagkarlsson.scheduler.task.schedule.FixedDelay;
import io.quarkus.runtime.ShutdownEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import vestiary.access.EveryCluster;

/** What the queue of jobs does with lists: brings long ones in, forgets files. */
@ApplicationScoped
class ImportJobs {

  static final String BRING_IN = "bring-in";

  private static final Duration LOOK_AGAIN = Duration.ofHours(1);

  private final RunImport run;
  private final SendList lists;
  private final EveryCluster clusters;
  private volatile boolean stopping;

  ImportJobs(RunImport run, SendList lists, EveryCluster clusters) {
    this.run = run;
    this.lists = lists;
    this.clusters = clusters;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  OneTimeTask<String> bringIn() {
    return Tasks.oneTime(BRING_IN, String.class)
        .onFailure(
            (end, operations) -> {
              if (stopping) {
                operations.reschedule(end, Instant.EPOCH);
                return;
              }
              Errand errand = Errand.parse((String) end.getExecution().taskInstance.getData());
              run.fail(
                  errand.cluster(),
                  errand.id(),
                  word("Something went wrong; nothing was changed."));
              operations.stop();
            })
        .execute(
            (job, context) -> {
              Errand errand = Errand.parse(job.getData());
              run.run(errand.cluster(), errand.id(), () -> stopping);
            });
  }

  /** Which list of which cluster; the same list may be tried more than once. */
  private record Errand(UUID cluster, UUID id) {
    static Errand parse(String data) {
      String[] parts = data.split(" ");
      return new Errand(UUID.fromString(parts[0]), UUID.fromString(parts[1]));
    }
  }

  /** Likewise. */
  @Produces
  @Singleton
  RecurringTask<Void> forgetFiles() {
    return Tasks.recurring("forget-import-files", FixedDelay.of(LOOK_AGAIN))
        .execute((job, context) -> clusters.each(lists::forgetOld));
  }

  void end(@Observes ShutdownEvent end) {
    stopping = true;
  }
}
