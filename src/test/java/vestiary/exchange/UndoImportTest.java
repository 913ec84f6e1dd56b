package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.containsString;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class UndoImportTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  /** A list of the scenario, one of its texts changed, and one line more. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "cluster; ,en; ,es|en; ''",
        "churches; Holy Trinity; Most Holy Trinity; nn,New Church,New Parish,Newtown,Saint Nobody,,,,,30,20,,,",
        "propers; Isidore; Isidor; our-lady-of-nowhere,,Our Lady of Nowhere,,,08-19,white,memorial,,,",
        "journeys; 14; 15; ''",
        "people; Tarnwick; Tarnwyck; new-man,Nemo New,New,Fr,priest,,,,,,,,,,,,,",
        "patterns; ,60,; ,55,; 'ht,FREQ=WEEKLY;BYDAY=TH,2026-11-01,07:15,30,,,,,,,,,,,,,,'",
        "masses; ,60,; ,75,; 'ht,2026-12-09,21:15,30,,,,,,,,,,,,,,,,,'",
        "pieces; festive; solemn; NEW-1,alb,,,,,,,ht,,,,,,,,,,,",
      })
  void what_an_import_changed_and_entered_is_put_back_to_the_byte(
      String what, String from, String to, String more) {
    Map<ImportWhat, String> before = lists();
    String list = before.get(list(what));
    String changed = list.replaceFirst("(?s)(\\r\\n.*?)" + from, "$1" + to) + more;
    assertNotEquals(list, changed, "nothing of the list is changed");
    String id = bringIn(what, changed);
    assertNotEquals(list, takenOut(list(what)));

    undo(id).then().statusCode(204);

    assertEquals(before, lists());
  }

  @Test
  void all_lists_of_a_cluster_are_undone_one_after_the_other() {
    Map<ImportWhat, String> lists = lists();
    scenario.empty();
    Map<ImportWhat, String> empty = lists();
    List<String> ids =
        lists.entrySet().stream()
            .map(one -> bringIn(one.getKey().id(), one.getValue()))
            .filter(id -> !id.isEmpty())
            .toList();
    assertEquals(lists, lists());

    for (int last = ids.size() - 1; last >= 0; last--) {
      undo(ids.get(last)).then().statusCode(204);
    }

    assertEquals(empty, lists());
  }

  @Test
  void who_serves_is_brought_in_with_a_mass_and_gone_with_it() {
    String head = "church,date,time,minutes,serving\r\n";
    String id =
        bringIn("masses", head + "ht,2026-12-09,21:15,30,tamsin-q|odo-larkspire:server\r\n");
    String mass = Asking.mass("ht", "2026-12-09T21:15").get("id").toString();
    assertEquals(2, Asking.list("/api/masses/%s/serving".formatted(mass)).size());
    String other = bringIn("masses", head + "ht,2026-12-09,21:15,30,odo-larkspire\r\n");
    assertEquals(
        "reader", Asking.only(Asking.list("/api/masses/%s/serving".formatted(mass))).get("role"));

    undo(other).then().statusCode(204);

    assertEquals(2, Asking.list("/api/masses/%s/serving".formatted(mass)).size());
    undo(id).then().statusCode(204);
    assertEquals(
        List.of(),
        Asking.masses("ht", "2026-12-09").stream()
            .filter(one -> one.get("id").equals(mass))
            .toList());
  }

  @Test
  void it_stands_in_the_history_under_whoever_pressed() {
    String id = bringIn("pieces", "code,kind,home\r\nNEW-1,alb,ht\r\n");

    undo(id);

    Browsing.page("/history").says("NEW-1");
    Browsing.page("/import").says("undone on");
  }

  @Test
  void what_was_changed_since_is_named_and_nothing_is_undone() {
    String id = bringIn("pieces", "code,kind,home\r\nNEW-1,alb,ht\r\nNEW-2,alb,ht\r\n");
    bringIn("pieces", "code,kind,home,place\r\nNEW-2,alb,ht,press\r\n");

    refusing
        .refused(422, "against-rule", () -> undo(id))
        .body("detail", containsString("vestment NEW-2"));
    refusing
        .unchanged(() -> Browsing.press("/import/" + id + "/undo"))
        .is(422)
        .says("vestment NEW-2");
  }

  @Test
  void what_something_entered_since_needs_is_not_taken_from_under_it() {
    String id = bringIn("churches", newChurch());
    Sending.mass(Map.of("church", "nn", "start", "2026-12-09T10:00"));

    refusing
        .refused(422, "against-rule", () -> undo(id))
        .body("detail", containsString("the Mass on 9 December 2026 at 10:00 in New Church"));
  }

  @Test
  void what_only_follows_from_it_goes_with_it() {
    Map<ImportWhat, String> before = lists();
    String id = bringIn("masses", "church,date,time,minutes\r\nht,2026-12-09,21:00,60\r\n");
    Planning.applied("2026-12-07", "2026-12-13");

    undo(id).then().statusCode(204);

    assertEquals(before, lists());
  }

  @Test
  void two_who_press_at_once_undo_it_once() {
    String id = bringIn("pieces", "code,kind,home\r\nNEW-1,alb,ht\r\n");

    List<Integer> answers =
        Stream.generate(() -> CompletableFuture.supplyAsync(() -> undo(id).statusCode()))
            .limit(4)
            .toList()
            .stream()
            .map(CompletableFuture::join)
            .toList();

    assertEquals(List.of(204, 204, 204, 204), answers);
    assertEquals(
        1, Asking.list("/api/imports").stream().filter(one -> one.get("id").equals(id)).count());
  }

  @Test
  void nothing_of_an_import_is_kept_once_somebody_was_removed_for_good() {
    String id =
        bringIn("people", "key,name,shortName,title,role\r\nnemo-new,Nemo New,New,Fr,priest\r\n");
    String waiting = BringingIn.waiting();

    Sending.post("/api/people/nemo-new/erasure", Map.of()).then().statusCode(204);

    refusing
        .refused(422, "against-rule", () -> undo(id))
        .body("detail", containsString("not kept any more"));
    given().get(waiting).then().statusCode(404);
    Browsing.page("/import").says("People: one line, imported on").keepsSilentOn("Undo");
  }

  @Test
  void a_pattern_that_was_changed_yields_its_masses_as_before() {
    String list = takenOut(ImportWhat.PATTERNS);
    Asking.list("/api/masses?from=2026-12-07&to=2026-12-13");
    String id = bringIn("patterns", list.replaceFirst("(?s)(\r\n.*?),60,", "$1,55,"));
    Asking.list("/api/masses?from=2027-08-02&to=2027-08-08");

    undo(id).then().statusCode(204);

    assertEquals(
        0,
        Asking.list("/api/masses?from=2026-12-07&to=2027-08-08").stream()
            .filter(mass -> mass.get("minutes").equals(55))
            .count());
  }

  @Test
  void an_import_that_is_not_there_is_not_undone() {
    refusing.notThere(() -> undo("01a21812-dd9b-7337-a797-149a8de60d94"));
  }

  private static String newChurch() {
    return "slug,name,parish,place,title,setOutMinutes,clearanceMinutes\r\n"
        + "nn,New Church,New Parish,Newtown,Saint Nobody,30,20\r\n";
  }

  private static ImportWhat list(String what) {
    return ReceiveByProgram.known(what);
  }

  private static Map<ImportWhat, String> lists() {
    Map<ImportWhat, String> lists = new EnumMap<>(ImportWhat.class);
    for (ImportWhat what : ImportWhat.values()) {
      lists.put(what, takenOut(what));
    }
    return lists;
  }

  private static String takenOut(ImportWhat what) {
    return given().get("/api/exports/%s.csv".formatted(what.id())).asString();
  }

  private static String bringIn(String what, String list) {
    return given()
        .contentType("text/csv")
        .body(list.getBytes(UTF_8))
        .post("/api/imports?dryRun=false&what=" + what)
        .then()
        .statusCode(200)
        .extract()
        .path("id");
  }

  private static Response undo(String id) {
    return given().delete("/api/imports/" + id);
  }
}
