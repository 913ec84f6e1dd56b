package vestiary.cluster;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** Whoever waits for a turn reads the cluster anew and loses nothing of his own. */
@QuarkusTest
class OneByOneTest {

  private static final LocalDate MONDAY = LocalDate.of(2026, 11, 30);

  @Inject Scenario scenario;
  @Inject ClusterRows clusters;
  @Inject ReadCluster cluster;
  @Inject OneByOne oneByOne;
  @Inject Horizon horizon;

  @BeforeEach
  void begin() {
    scenario.empty();
  }

  @Test
  void what_was_changed_before_the_wait_is_kept() {
    assertKept(oneByOne::waitForTurn);
  }

  @Test
  void what_was_changed_before_mass_times_are_unfolded_is_kept() {
    assertKept(horizon::lock);
  }

  private void assertKept(Runnable readingAnew) {
    UUID another = scenario.openAnother();

    scenario.within(
        another,
        () -> {
          clusters.findById(another).demoMonday = MONDAY;
          readingAnew.run();
        });

    scenario.within(another, () -> assertEquals(Optional.of(MONDAY), cluster.findDemoMonday()));
  }
}
