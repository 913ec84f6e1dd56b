package vestiary.times;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Optional;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;

/** Publishes Mass times: what was published stands until it is done again. */
@ApplicationScoped
@Transactional
public class PublishTimes {

  static final int USUAL_WEEKS = 8;
  static final int MOST_WEEKS = 26;

  private final PublishedTimesRows rows;
  private final GatherTimes gather;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  PublishTimes(
      PublishedTimesRows rows,
      GatherTimes gather,
      ReadCluster cluster,
      CurrentVisitor visitor,
      Clock clock) {
    this.rows = rows;
    this.gather = gather;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /** What holds; empty before anything was published. */
  Optional<Published> find() {
    ZoneId zone = cluster.cluster().zone();
    return rows.findLast()
        .map(
            row ->
                new Published(
                    row.turn,
                    row.publishedAt.atZone(zone),
                    row.visitor,
                    row.firstDay,
                    row.lastDay,
                    row.times));
  }

  /**
   * Publishes the schedule as it is now, from the Monday of this week.
   *
   * @param typed how many weeks, 1 to 26; 8 where nothing is typed
   * @throws vestiary.problem.Refused if that is no such number
   */
  Published publish(String typed) {
    Asked asked = new Asked();
    int weeks = asked.whole("weeks", asked.number("weeks", typed), 1, MOST_WEEKS, USUAL_WEEKS);
    asked.refuseIfFaulty();
    LocalDate monday = monday(today());
    PublishedTimesRow row = new PublishedTimesRow();
    row.turn = rows.findLast().map(last -> last.turn).orElse(0) + 1;
    row.publishedAt = clock.instant();
    row.visitor = visitor.visitor().mark();
    row.firstDay = monday;
    row.lastDay = monday.plusWeeks(weeks).minusDays(1);
    row.times = gather.of(row.firstDay, row.lastDay);
    rows.persistAndFlush(row);
    rows.forgetBefore(row.turn);
    return find().orElseThrow();
  }

  /** The same for so many weeks, where the program fills a cluster by itself. */
  public void publish(int weeks) {
    publish(String.valueOf(weeks));
  }

  /** By the cluster's clock. */
  LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }

  static LocalDate monday(LocalDate date) {
    return date.minusDays(date.getDayOfWeek().getValue() - 1L);
  }
}
