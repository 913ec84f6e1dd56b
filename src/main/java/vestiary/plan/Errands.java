package vestiary.plan;

import com.github.kagkarlsson.scheduler.task.TaskInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Instance;
import java.time.Duration;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * What other rooms have to do that takes long: from the same queue as plans. A room offers its task
 * as a bean; one copy of the server does it.
 */
@ApplicationScoped
public class Errands {

  private final Instance<PlanJobs> jobs;
  private final PlanWatch watch;

  Errands(Instance<PlanJobs> jobs, PlanWatch watch) {
    this.jobs = jobs;
    this.watch = watch;
  }

  /** Enters it in the present transaction, due at once. */
  public void enter(TaskInstance<String> errand) {
    jobs.get().enter(errand);
  }

  /** Looks for what was entered, once that can be seen. */
  public void look() {
    jobs.get().look();
  }

  /** Something about some errand was written. */
  public void announce() {
    watch.announce();
  }

  /** Looks until it is good, or the time is over; then the last look is the answer. */
  public <T> T await(Supplier<T> look, Predicate<T> isGood, Duration longest) {
    return watch.await(look, isGood, longest);
  }
}
