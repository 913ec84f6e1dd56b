package vestiary.remedy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** To try out what mends a clash takes a while; nobody waits for it twice. */
@QuarkusTest
class KnownOffersTest {

  private static final LocalDate JUBILEE = LocalDate.of(2026, 12, 8);

  @Inject Scenario scenario;
  @Inject KnownOffers known;
  @Inject CheckClashes check;

  private final AtomicInteger found = new AtomicInteger();

  @BeforeEach
  void a_day_that_no_other_test_has_asked_about() {
    scenario.load();
    Sending.mass("sj", JUBILEE + "T05:45");
  }

  @Test
  void what_was_offered_is_remembered_until_something_changes() {
    ask();
    ask();
    assertEquals(1, found.get());

    Sending.mass("sj", JUBILEE + "T06:30");
    ask();

    assertEquals(2, found.get());
  }

  private void ask() {
    scenario.within(
        scenario.ours(),
        () -> {
          SpanToCheck span = check.load(JUBILEE, JUBILEE);
          known.of(
              check.in(span).get(0),
              span,
              () -> {
                found.incrementAndGet();
                return List.of();
              });
        });
  }
}
