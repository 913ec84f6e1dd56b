package vestiary.access;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/**
 * Every page and every address of the API that reads is opened by those who are not responsible for
 * a child, who was named wherever a name can stand: none of them tells the surname. Source: the
 * invented scenario's server, Tamsin Quillfeather.
 */
@QuarkusTest
class ChildrenUnseenTest {

  private static final String SURNAME = "quillfeather";
  private static final String SPAN = "?from=2026-11-23&to=2026-12-20";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject OneOfEverything one;

  private OneOfEverything.Names names;

  @BeforeEach
  void a_child_is_named_wherever_a_name_can_stand() {
    scenario.load();
    names = one.names();
    Object journey = Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id");
    Sending.post(
            "/api/movements/%s/ask".formatted(journey), Map.of("carrier", "Tamsin Quillfeather"))
        .then()
        .statusCode(200);
    Sending.post("/api/people/tamsin-q/absences", Map.of("from", "2026-12-01"))
        .then()
        .statusCode(201);
    Sending.put(
            "/api/masses/%s/serving".formatted(Asking.mass("sa", "2026-12-08T18:30").get("id")),
            Map.of("serving", List.of(Map.of("person", "tamsin-q", "role", "server"))))
        .then()
        .statusCode(200);
    Sending.put("/api/people/tamsin-q", Map.of("name", "Tamsin Quillfeather", "role", "reader"))
        .then()
        .statusCode(200);
  }

  @Test
  void nobody_who_is_not_responsible_reads_the_surname_anywhere() {
    String reader = letting.token(letting.user("reads", Role.READER));
    String minister = letting.token(letting.user("serves", Role.MINISTER));
    String overseer = letting.token(letting.user("oversees", Role.OVERSEER));
    String elsewhere = letting.token(letting.user(Role.SACRISTAN, "sa"));
    List<String> told = new ArrayList<>();
    int read = 0;
    for (String token : List.of(reader, minister, overseer, elsewhere)) {
      read += walk(() -> LettingIn.program(token), told);
    }
    scenario.becomeDemo();
    read += walk(LettingIn::nobody, told);

    assertEquals(List.of(), told);
    assertTrue(read > 200, "only %d answers were read".formatted(read));
  }

  @Test
  void those_who_are_responsible_read_it_on_the_page_of_the_child() {
    String here = letting.token(letting.user(Role.SACRISTAN, "ht"));
    String pastor = letting.token(letting.user(Role.PASTOR));
    for (String token : List.of(here, pastor)) {
      for (String address : List.of("/people", "/people/tamsin-q", "/api/people/tamsin-q")) {
        assertTrue(tells(LettingIn.program(token).accept("*/*").get(address)), address);
      }
    }
  }

  /** Opens everything; answers how many answers were more than a refusal. */
  private int walk(Supplier<RequestSpecification> as, List<String> told) {
    int read = 0;
    for (Endpoint endpoint : Endpoint.all()) {
      if (endpoint.reads() && !endpoint.isOpenToAll() && !isOfNoCluster(endpoint.path())) {
        String address = names.fill(child(endpoint.path()));
        Response answer = as.get().accept("*/*").get(address + SPAN);
        read += answer.statusCode() == 200 ? 1 : 0;
        if (tells(answer)) {
          told.add(address);
        }
      }
    }
    return read;
  }

  private static boolean isOfNoCluster(String path) {
    return path.startsWith("/problems/") || path.startsWith("/api/calendars/");
  }

  /** Where somebody is meant, the child is. */
  private static String child(String path) {
    return path.replace("/people/{slug}", "/people/tamsin-q");
  }

  private static boolean tells(Response answer) {
    return answer.asString().toLowerCase(Locale.ROOT).contains(SURNAME);
  }
}
