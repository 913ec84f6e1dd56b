package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;
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
          "/celebrants/{date}",
          "/review/{date}",
          "/api/coverage/{week}/sign",
          "/plans/of/{date}",
          "/year/{year}",
          "/year/{year}.ics",
          "/year/{year}.csv",
          "/problems/{name}",
          "/api/exports/{what}.csv",
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
  @Inject OneOfEverything one;

  private OneOfEverything.Names foreign;
  private String admin;

  @BeforeEach
  void the_other_cluster_has_one_of_everything() {
    scenario.load();
    foreign = one.names();
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
        && answer.asString().contains("Nothing was changed, as far as changes are kept.");
  }

  private Response call(Endpoint endpoint) {
    RequestSpecification request = LettingIn.program(admin).accept("*/*");
    if (endpoint.takes().startsWith("multipart/")) {
      request.contentType(endpoint.takes()).multiPart("reason", "");
    } else if (!endpoint.reads()) {
      request.contentType(endpoint.takes());
      request.body(endpoint.takes().equals(MediaType.APPLICATION_JSON) ? "{}" : "");
    }
    return request.request(endpoint.verb(), foreign.fill(endpoint.path()));
  }
}
