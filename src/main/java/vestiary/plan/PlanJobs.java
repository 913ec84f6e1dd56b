package vestiary.plan;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.Task;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.OneTimeTask;
import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import io.agroal.api.AgroalDataSource;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Any;
import jakarta.enterprise.inject.Instance;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * The queue of plans to be worked out, in the database that all copies of the server share: one of
 * them takes the next, and another goes on when it dies. What other rooms have to do again and
 * again is done from it, too.
 */
@ApplicationScoped
class PlanJobs {

  private static final Duration LOOK_AGAIN = Duration.ofSeconds(5);
  private static final Duration SIGN_OF_LIFE = Duration.ofSeconds(3);
  private static final int SIGNS_MISSED = 4;
  private static final Duration LONGEST_GOODBYE = Duration.ofSeconds(10);

  /** Two at a time leave the machine to those who look at pages. */
  private static final int AT_A_TIME = 2;

  private final AgroalDataSource database;
  private final RunPlan run;
  private final Instance<RecurringTask<?>> recurring;
  private final Instance<OneTimeTask<String>> errands;
  private final OneTimeTask<String> task;
  private Scheduler scheduler;
  private volatile boolean stopping;

  PlanJobs(
      AgroalDataSource database,
      RunPlan run,
      @Any Instance<RecurringTask<?>> recurring,
      @Any Instance<OneTimeTask<String>> errands) {
    this.errands = errands;
    this.recurring = recurring;
    this.database = database;
    this.run = run;
    this.task =
        Tasks.oneTime("plan", String.class)
            .onFailure(this::failed)
            .execute(
                (job, context) ->
                    run.run(
                        UUID.fromString(job.getData()),
                        UUID.fromString(job.getId()),
                        () -> stopping));
  }

  /** After the first start has opened a cluster: until then there is nothing to plan. */
  void begin(@Observes @Priority(5000) StartupEvent start) {
    stopping = false;
    scheduler =
        Scheduler.create(database, tasks())
            .startTasks(recurring.stream().toList())
            .schedulerName(new SchedulerName.Fixed("vestiary " + UUID.randomUUID()))
            .threads(AT_A_TIME)
            .pollingInterval(LOOK_AGAIN)
            .heartbeatInterval(SIGN_OF_LIFE)
            .missedHeartbeatsLimit(SIGNS_MISSED)
            .shutdownMaxWait(LONGEST_GOODBYE)
            .enableImmediateExecution()
            .build();
    scheduler.start();
  }

  private List<Task<?>> tasks() {
    List<Task<?>> tasks = new ArrayList<>(errands.stream().toList());
    tasks.add(task);
    return tasks;
  }

  void end(@Observes ShutdownEvent end) {
    stopping = true;
    scheduler.stop();
  }

  /** Enters a plan in the present transaction, due at once. */
  void enter(UUID cluster, UUID plan) {
    scheduler.schedule(task.instance(plan.toString(), cluster.toString()), Instant.EPOCH);
  }

  /** Enters an errand of another room in the present transaction, due at once. */
  void enter(TaskInstance<String> errand) {
    scheduler.schedule(errand, Instant.EPOCH);
  }

  /** Looks for what was entered, once that can be seen. */
  void look() {
    scheduler.triggerCheckForDueExecutions();
  }

  /** A copy that stops hands its plan on; whatever else ends a job is a fault of ours. */
  private void failed(ExecutionComplete end, ExecutionOperations<String> operations) {
    if (stopping) {
      operations.reschedule(end, Instant.EPOCH);
      return;
    }
    run.fail(
        UUID.fromString((String) end.getExecution().taskInstance.getData()),
        UUID.fromString(end.getExecution().taskInstance.getId()));
    operations.stop();
  }
}
