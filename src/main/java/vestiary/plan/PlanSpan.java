package vestiary.plan;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.Optional;
import org.hibernate.exception.ConstraintViolationException;
import vestiary.access.CurrentCluster;
import vestiary.calendar.LiturgicalCalendar;
import vestiary.problem.Asked;

/**
 * Asks for the plan of a span: it is worked out in the background by whichever copy of the server
 * comes first. Who asks for a span that is being planned gets that plan.
 */
@ApplicationScoped
public class PlanSpan {

  /** The longest span planned at once: a month. */
  static final int LONGEST_DAYS = 31;

  /** Plans that nobody applied are looked at for so long. */
  private static final Duration KEPT = Duration.ofDays(30);

  private final PlanRows plans;
  private final PlanJobs jobs;
  private final CurrentCluster cluster;
  private final Clock clock;

  PlanSpan(PlanRows plans, PlanJobs jobs, CurrentCluster cluster, Clock clock) {
    this.plans = plans;
    this.jobs = jobs;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * The dates as they were typed.
   *
   * @param from first date, included
   * @param to last date, included, at most 30 days later
   * @param keep whether only what a change has touched since the plan that holds is planned anew;
   *     not given: no
   */
  public record Request(String from, String to, Boolean keep) {}

  /**
   * Asks for a plan.
   *
   * @return its id, or that of the one which is being worked out for these very dates
   * @throws vestiary.problem.Refused if the dates make no span of 1 to 31 days of the calendar
   */
  public String ask(Request request) {
    Asked asked = new Asked();
    Asked.Span dates = asked.span(request.from(), request.to(), LONGEST_DAYS - 1);
    if (!asked.isFaulty()) {
      keepWithin(dates, asked);
    }
    asked.refuseIfFaulty();
    boolean keeping = Boolean.TRUE.equals(request.keep());
    String id = find(dates, keeping).orElseGet(() -> ask(dates, keeping));
    jobs.look();
    return id;
  }

  private static void keepWithin(Asked.Span dates, Asked asked) {
    if (dates.first().isBefore(LiturgicalCalendar.FIRST.plusDays(1))
        || dates.last().isAfter(LiturgicalCalendar.LAST.minusDays(2))) {
      asked.fault("from", say("The calendar does not reach these dates."));
    }
  }

  private Optional<String> find(Asked.Span dates, boolean keeping) {
    return QuarkusTransaction.requiringNew()
        .call(
            () ->
                plans
                    .findAtWork(dates.first(), dates.last(), keeping)
                    .map(row -> row.id.toString()));
  }

  private String ask(Asked.Span dates, boolean keeping) {
    try {
      return QuarkusTransaction.requiringNew()
          .call(() -> enter(dates.first(), dates.last(), keeping));
    } catch (ConstraintViolationException pressedTwice) {
      // Somebody pressed at the same moment and was first; if even that plan is over by now, theirs
      // would be the answer to this press as well.
      return find(dates, keeping).orElseThrow(() -> pressedTwice);
    }
  }

  private String enter(LocalDate first, LocalDate last, boolean keeping) {
    plans.forgetOlderThan(clock.instant().minus(KEPT));
    PlanRow row = new PlanRow();
    row.firstDate = first;
    row.lastDate = last;
    row.keeping = keeping;
    row.requestedAt = clock.instant();
    plans.persistAndFlush(row);
    jobs.enter(cluster.id(), row.id);
    return row.id.toString();
  }
}
