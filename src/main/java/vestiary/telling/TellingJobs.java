package vestiary.telling;

import com.github.kagkarlsson.scheduler.task.helper.RecurringTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.time.Clock;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import vestiary.access.Rounds;

/** Looks again and again whether letters are to be written. */
@ApplicationScoped
class TellingJobs {

  private static final Duration WEEK_LOOK_AGAIN = Duration.ofMinutes(10);
  private static final Duration CHANGES_LOOK_AGAIN = Duration.ofMinutes(1);

  private final Rounds rounds;
  private final WriteWeekLetters week;
  private final TellChanges changes;
  private final TellSacristies sacristies;
  private final Clock clock;
  private final boolean isOn;

  TellingJobs(
      Rounds rounds,
      WriteWeekLetters week,
      TellChanges changes,
      TellSacristies sacristies,
      Clock clock,
      @ConfigProperty(name = "vestiary.telling") boolean isOn) {
    this.rounds = rounds;
    this.week = week;
    this.changes = changes;
    this.sacristies = sacristies;
    this.clock = clock;
    this.isOn = isOn;
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> weekly() {
    return rounds.every(WEEK_LOOK_AGAIN, "write letters of the week", isOn, week::look);
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> everyMinute() {
    return rounds.every(
        CHANGES_LOOK_AGAIN, "tell changes", isOn, () -> changes.look(clock.instant()));
  }

  /** For the queue of jobs. */
  @Produces
  @Singleton
  RecurringTask<Void> everyMinuteInSacristies() {
    return rounds.every(
        CHANGES_LOOK_AGAIN, "tell sacristies", isOn, () -> sacristies.look(clock.instant()));
  }
}
