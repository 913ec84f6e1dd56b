package vestiary.feed;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import vestiary.scenario.Scenario;

/** Leaves what is counted when a calendar with journeys is asked for. */
@ApplicationScoped
public class AskingForFeeds {

  private final Scenario scenario;
  private final StampEvents stamps;

  AskingForFeeds(Scenario scenario, StampEvents stamps) {
    this.scenario = scenario;
    this.stamps = stamps;
  }

  /** One journey of the default cluster was seen. */
  public void leaveTraces() {
    CalendarEvent drive =
        new CalendarEvent(
            "a-drive",
            0,
            Instant.EPOCH,
            Instant.parse("2026-12-06T09:00:00Z").atZone(ZoneOffset.UTC),
            Instant.parse("2026-12-06T09:25:00Z").atZone(ZoneOffset.UTC),
            "Drive",
            "",
            "",
            false,
            true);
    scenario.within(scenario.ours(), () -> stamps.stamp(List.of(drive)));
  }
}
