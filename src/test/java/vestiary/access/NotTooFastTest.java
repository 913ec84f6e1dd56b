package vestiary.access;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.program;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.Header;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;
import vestiary.users.LettingIn;

/** Source: RFC 6585, 4 (429 Too Many Requests). */
@QuarkusTest
class NotTooFastTest {

  /** A crowd behind one router; of the range for documentation (RFC 5737), never met elsewhere. */
  private static final Header ROUTER = new Header("X-Forwarded-For", "203.0.113.7");

  /** What comes in while nobody looks may let some requests through. */
  private static final int MOST_TRIES = 100;

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Allowances allowances;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  @Test
  void ten_people_at_one_address_work_through_a_busy_minute_undisturbed() {
    List<String> sessions = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      sessions.add(letting.session(letting.user("person-" + i, Role.SACRISTAN, "ht")));
    }
    Set<Integer> answers = new HashSet<>();

    for (int round = 0; round < 20; round++) {
      for (String session : sessions) {
        answers.add(browser(session).header(ROUTER).get("/account").statusCode());
      }
    }

    assertEquals(Set.of(200), answers);
  }

  @Test
  void whoever_asks_far_too_fast_waits_and_nobody_else_does() {
    UUID fast = letting.user("fast", Role.READER);
    String token = letting.token(fast);
    String other = letting.token(letting.user("other", Role.READER));

    Response refused =
        beside(
            () -> allowances.findPauseOfUser(scenario.ours().toString() + fast),
            () -> program(token).get("/api/churches/nowhere"));

    refused
        .then()
        .contentType("application/problem+json")
        .header("Retry-After", matchesPattern("[1-9]\\d*"))
        .body("type", equalTo("/problems/too-often"))
        .body("status", equalTo(429))
        .body("detail", containsString("ask again; nothing was changed"));
    program(other).get("/api/churches").then().statusCode(200);
  }

  @Test
  void strangers_are_counted_by_address_and_signed_in_people_are_not() {
    String known = letting.session(letting.user("known", Role.READER));
    Header flood = new Header("X-Forwarded-For", "203.0.113.9");

    beside(
            () -> allowances.findPauseOfAddress(flood.getValue()),
            () -> browser().header(flood).get("/week"))
        .then()
        .contentType("text/html")
        .body(containsString("Too often"), containsString("and ask again"));
    browser(known).header(flood).get("/account").then().statusCode(200);
    browser().header(ROUTER).get("/sign-in").then().statusCode(200);
  }

  @Test
  void an_invented_cookie_makes_nobody_less_of_a_stranger() {
    Header flood = new Header("X-Forwarded-For", "203.0.113.11");
    String invented = Secret.fresh(UUID.randomUUID()).text();

    beside(
            () -> allowances.findPauseOfAddress(flood.getValue()),
            () -> browser(invented).header(flood).get("/sign-in"))
        .then()
        .statusCode(429);
  }

  @Test
  void the_token_of_the_server_sets_up_a_whole_cluster_without_a_pause() {
    String keeper = scenario.ours() + new Visitor.KeeperOfServer().mark();
    while (allowances.findPauseOfUser(keeper).isEmpty()) {
      // Nothing is left to anybody of that name.
    }

    assertEquals(404, RestAssured.get("/api/churches/nowhere").statusCode());
  }

  /** The answer to one request while others take all that comes in. */
  private static Response beside(Supplier<Optional<Duration>> others, Supplier<Response> request) {
    AtomicBoolean done = new AtomicBoolean();
    Thread crowd =
        new Thread(
            () -> {
              while (!done.get()) {
                others.get();
              }
            });
    crowd.start();
    try {
      return Stream.generate(request)
          .limit(MOST_TRIES)
          .filter(answer -> answer.statusCode() == 429)
          .findFirst()
          .orElseThrow(() -> new AssertionError("never refused"));
    } finally {
      done.set(true);
    }
  }
}
