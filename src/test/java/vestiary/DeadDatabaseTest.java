package vestiary;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** The database goes away and comes back; the server tells it, and needs no restart. */
@QuarkusTest
class DeadDatabaseTest {

  /** As the pool is configured. */
  private static final int MOST_CONNECTIONS = 16;

  private static final Duration PATIENCE = Duration.ofSeconds(8);

  @Inject Scenario scenario;

  /** Set by {@link TestDatabase}, whose every connection leads through it. */
  CuttableProxy way;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
    assertEquals(1, Asking.list("/api/churches").size());
  }

  @AfterEach
  void the_way_is_open_again() {
    way.restore();
  }

  @Test
  void while_it_is_away_every_request_is_told_so_and_afterwards_all_is_well() {
    way.cut();
    for (int i = 0; i < 3; i++) {
      assertAway(() -> get("/api/churches"));
    }
    assertAway(() -> get("/api/clashes?from=2026-12-07&to=2026-12-13"));
    assertAway(() -> post("/api/masses", Map.of("church", "ht", "start", "2026-12-08T18:30")));

    way.restore();

    assertEquals(1, Asking.list("/api/churches").size());
    assertEquals(List.of(), Asking.masses("ht", "2026-12-08"));
    Sending.mass("ht", "2026-12-08T18:30");
  }

  @Test
  void a_connection_that_broke_unseen_is_replaced() {
    way.cut();
    way.restore();

    for (int i = 0; i < 5; i++) {
      get("/api/churches").then().statusCode(200);
    }
  }

  @Test
  void calendars_need_no_database_and_readiness_says_that_it_is_away() {
    way.cut();

    get("/q/health/ready").then().statusCode(503);
    get("/q/health/live").then().statusCode(200);

    way.restore();
    // Each look finds, and drops, one connection that broke while it lay idle in the pool.
    int looks = 0;
    while (get("/q/health/ready").statusCode() == 503 && looks < MOST_CONNECTIONS) {
      looks++;
    }
    get("/q/health/ready").then().statusCode(200);
  }

  private static void assertAway(Supplier<Response> request) {
    Instant before = Instant.now();
    request
        .get()
        .then()
        .statusCode(503)
        .contentType("application/problem+json")
        .body("type", equalTo("/problems/database-away"))
        .body("detail", containsString("nothing was changed"));
    Duration waited = Duration.between(before, Instant.now());
    assertTrue(waited.compareTo(PATIENCE) < 0, "told after " + waited);
  }
}
