package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * Every address that names something is called with what another cluster has: it is not there, for
 * an administrator of ours as for anybody. A new address needs a line here.
 */
@QuarkusTest
class ForeignIdsTest {

  /** Parts that name nothing of a cluster, but a date, a calendar or a kind of problem. */
  private static final List<String> OF_NO_CLUSTER =
      List.of(
          "/day/{date}",
          "/week/{date}",
          "/plans/of/{date}",
          "/year/{year}",
          "/year/{year}.ics",
          "/year/{year}.csv",
          "/problems/{name}",
          "/api/calendars/{id}/days");

  /** The history of what is not there is empty, as that of what nobody changed. */
  private static final String HISTORY = "/history/";

  /**
   * What mends a clash that is not there is answered as that of one that is gone: its id follows
   * from what falls short and is kept nowhere.
   */
  private static final String MENDING = "/remedies/{n}";

  @Inject Scenario scenario;
  @Inject LettingIn letting;

  /** Beginnings of addresses, and what stands there for the first variable part. */
  private final Map<String, String> foreign = new LinkedHashMap<>();

  private String care;
  private String admin;

  @BeforeEach
  void the_other_cluster_has_one_of_everything() {
    scenario.load();
    String mass = Asking.mass("sa", "2026-12-08T18:30").get("id").toString();
    String pattern = Asking.list("/api/patterns").get(0).get("id").toString();
    String plan = Planning.applied("2026-12-07", "2026-12-13").get("id").toString();
    String journey =
        Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id").toString();
    String person = Asking.list("/api/people").get(0).get("slug").toString();
    String clash = Asking.clashes("2026-11-30", "2026-12-31").get(0).get("id").toString();
    care =
        Sending.post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-20", "reason", "Theirs"))
            .then()
            .statusCode(201)
            .extract()
            .path("id")
            .toString();
    String proper = Asking.list("/api/propers").get(0).get("id").toString();
    UUID user = letting.user(Role.READER);
    String token = letting.tokenId(user);
    String link = letting.link(user);
    foreign.put("/history/vestments/", "HT-W1-C");
    foreign.put("/history/", mass);
    foreign.put("/vestments/sets/", "HT-W1");
    foreign.put("/vestments/", "HT-W1-C");
    foreign.put("/api/pieces/", "HT-W1-C");
    foreign.put("/api/sets/", "HT-W1");
    foreign.put("/masses/", mass);
    foreign.put("/api/masses/", mass);
    foreign.put("/api/patterns/", pattern);
    foreign.put("/plans/", plan);
    foreign.put("/api/plans/", plan);
    foreign.put("/movements/", journey);
    foreign.put("/api/movements/", journey);
    foreign.put("/consents/", mass);
    foreign.put("/api/consents/", mass);
    foreign.put("/api/people/", person);
    foreign.put("/clashes/", clash);
    foreign.put("/api/clashes/", clash);
    foreign.put("/churches/", "ht");
    foreign.put("/api/churches/", "ht");
    foreign.put("/propers/", proper);
    foreign.put("/api/propers/", proper);
    foreign.put("/users/", user.toString());
    foreign.put("/api/users/", user.toString());
    foreign.put("/api/tokens/", token);
    foreign.put("/account/passkeys/", letting.passkeyId(user));
    foreign.put("/mail/", letting.mailLink(user));
    foreign.put("/account/tokens/", token);
    foreign.put("/welcome/", link);
    scenario.becomeAnother();
    admin = letting.token(letting.user("ours", Role.ADMINISTRATOR));
  }

  @Test
  void what_another_cluster_has_is_nowhere_there() {
    List<String> wrong = new ArrayList<>();
    List<Endpoint> naming =
        Endpoint.all().stream()
            .filter(e -> e.path().contains("{") && !OF_NO_CLUSTER.contains(e.path()))
            .toList();
    assertTrue(naming.size() > 40, "found only " + naming.size());
    for (Endpoint endpoint : naming) {
      Response answer = call(endpoint);
      if (answer.statusCode() != 404
          && !isEmptyHistory(endpoint, answer)
          && !isNoClash(endpoint, answer)) {
        wrong.add(endpoint + ": " + answer.statusCode());
      }
    }

    assertEquals(List.of(), wrong);
  }

  private static boolean isNoClash(Endpoint endpoint, Response answer) {
    return endpoint.path().endsWith(MENDING)
        && answer.statusCode() == 409
        && answer.asString().contains("This clash does not stand any more");
  }

  private static boolean isEmptyHistory(Endpoint endpoint, Response answer) {
    return endpoint.path().startsWith(HISTORY)
        && answer.asString().contains("Nothing was changed since changes are kept.");
  }

  private Response call(Endpoint endpoint) {
    RequestSpecification request = LettingIn.program(admin).accept("*/*");
    if (!endpoint.reads()) {
      request.contentType(endpoint.takes());
      request.body(endpoint.takes().equals(MediaType.APPLICATION_JSON) ? "{}" : "");
    }
    return request.request(endpoint.verb(), filled(endpoint.path()));
  }

  private String filled(String path) {
    String first =
        foreign.entrySet().stream()
            .filter(entry -> path.startsWith(entry.getKey()))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElseThrow(() -> new AssertionError("what is foreign at " + path + "?"));
    return path.replace("{date}", "2026-12-08")
        .replaceFirst("/care/\\{id}", "/care/" + care)
        .replaceFirst("\\{[^}]+}", first)
        .replaceAll("\\{[^}]+}", "1");
  }
}
