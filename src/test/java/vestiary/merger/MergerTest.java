package vestiary.merger;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Today is Monday 30 November 2026. */
@QuarkusTest
class MergerTest {

  private static final String CLOSING = "/churches/sj/closing";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_church_that_closes_keeps_what_was_and_has_no_mass_from_that_day_on() {
    Map<String, Object> last = Asking.mass("sj", "2026-12-06T08:00");
    Asking.mass("sj", "2026-12-20T08:00");

    send(CLOSING, Map.of("from", List.of("2026-12-14"), "note", List.of("Decree 7 of 2026")))
        .leadsTo(CLOSING + "?done=closed");

    assertEquals(last.get("id"), Asking.mass("sj", "2026-12-06T08:00").get("id"));
    assertEquals(List.of(), Asking.masses("sj", "2026-12-20"));
    assertEquals(List.of(), Asking.masses("sj", "2026-12-27"));
    page(CLOSING).says("Closed from 14 December 2026", "Decree 7 of 2026");
    page("/churches/sj").isHeaded("Saint Joseph, Ashlanding");
    refusing.unfit(
        () ->
            post("/api/masses", Map.of("church", "sj", "start", "2026-12-20T08:00", "minutes", 60)),
        "church");
    refusing.unfit(
        () ->
            post(
                "/api/patterns",
                Map.of(
                    "church",
                    "sj",
                    "rrule",
                    "FREQ=WEEKLY;BYDAY=SU",
                    "starts",
                    "2026-12-06",
                    "time",
                    "09:00")),
        "until");
  }

  @Test
  void what_ends_is_told_before_it_is_done() {
    refusing.unchanged(
        () -> page(CLOSING + "?from=2026-12-13").says("regular Mass times end", "no longer said"));
  }

  @Test
  void a_church_opens_again() {
    send(CLOSING, Map.of("from", List.of("2026-12-13"))).leadsTo(CLOSING + "?done=closed");

    press(CLOSING + "/end").leadsTo(CLOSING + "?done=opened");

    post("/api/masses", Map.of("church", "sj", "start", "2026-12-20T08:00", "minutes", 60))
        .then()
        .statusCode(201);
  }

  @Test
  void its_pieces_go_home_to_another_church_and_keep_their_owner() {
    Map<String, Object> piece = at("sj").get(0);

    send(CLOSING + "/goods", Map.of("to", List.of("ht"))).leadsTo(CLOSING + "?done=goods");

    assertEquals(List.of(), at("sj"));
    get("/api/pieces/" + piece.get("code"))
        .then()
        .body("home", equalTo("ht"))
        .body("owner", equalTo(piece.get("owner")));
    page(CLOSING).says("No piece is at home here.", "went home to Holy Trinity");
  }

  @Test
  void a_day_that_is_past_or_another_church_that_is_none_is_refused_and_the_decree_kept() {
    refusing
        .unchanged(
            () ->
                send(
                    CLOSING,
                    Map.of("from", List.of("2026-11-01"), "note", List.of("<b>Decree</b>"))))
        .is(400)
        .says("is past");
    refusing
        .unchanged(() -> send(CLOSING + "/goods", Map.of("to", List.of("sj"))))
        .is(400)
        .says("Choose another church of this cluster.");
    open("/churches/nowhere/closing").is(404);
  }

  @Test
  void a_parish_that_is_merged_gives_its_churches_and_goods_to_the_other() {
    Map<String, Object> before = at("sj").get(0);
    String name = parishOf("sj");
    Map<String, List<String>> form = new HashMap<>();
    form.put("from", List.of(parish(name)));
    form.put("into", List.of(parish(parishOf("ht"))));
    form.put("since", List.of("2026-11-29"));
    form.put("note", List.of("Decree 8 of 2026"));

    send("/parishes/merger", form).leadsTo("/parishes?done=merged");

    assertEquals(parishOf("ht"), parishOf("sj"));
    get("/api/pieces/" + before.get("code")).then().body("owner", equalTo(parishOf("ht")));
    page("/parishes").says("Merged into", "from 29 November 2026", "Decree 8 of 2026");
    refusing.unchanged(() -> send("/parishes/merger", form)).is(422).says("both still stand");
  }

  @Test
  void a_program_is_told_first_and_closes_then() {
    String address = "/api/churches/sj/closing";
    Map<String, String> closing = Map.of("from", "2026-12-14", "note", "Decree 7 of 2026");
    Asking.mass("sj", "2026-12-20T08:00");

    refusing.unchanged(
        () ->
            post(address + "?dryRun=true", closing)
                .then()
                .statusCode(200)
                .body("done", equalTo(false))
                .body("ends[0]", containsString("regular Mass times end"))
                .body("pieces", greaterThan(0)));
    refusing.unfit(() -> post(address + "?dryRun=perhaps", closing), "dryRun");
    refusing.unfit(() -> post(address, Map.of("from", "2026-11-01")), "from");
    post(address, closing).then().statusCode(200).body("done", equalTo(true));

    assertEquals(List.of(), Asking.masses("sj", "2026-12-20"));
    int pieces =
        post(address + "/goods?dryRun=true", Map.of("to", "ht"))
            .then()
            .statusCode(200)
            .extract()
            .path("pieces");
    assertEquals(at("sj").size(), pieces);
    post(address + "/goods", Map.of("to", "ht")).then().statusCode(200);
    assertEquals(List.of(), at("sj"));
    delete(address).then().statusCode(204);
    post("/api/masses", Map.of("church", "sj", "start", "2026-12-20T08:00", "minutes", 60))
        .then()
        .statusCode(201);
  }

  @Test
  void a_program_merges_parishes_after_a_trial() {
    Map<String, Object> ends = parishNamed(parishOf("sj"));
    Map<String, Object> stays = parishNamed(parishOf("ht"));
    String address = "/api/parishes/%s/merger".formatted(ends.get("id"));
    Map<String, Object> merging = Map.of("into", stays.get("id"), "since", "2026-11-29");

    refusing.unchanged(
        () ->
            post(address + "?dryRun=true", merging)
                .then()
                .statusCode(200)
                .body("done", equalTo(false))
                .body("churches", equalTo(ends.get("churches")))
                .body("pieces", greaterThan(0)));
    post(address, merging).then().statusCode(200).body("done", equalTo(true));

    assertEquals(parishOf("ht"), parishOf("sj"));
    assertEquals(stays.get("name"), parishNamed(ends.get("name").toString()).get("mergedInto"));
    refusing.unchanged(() -> post(address, merging).then().statusCode(422));
  }

  private static Map<String, Object> parishNamed(String name) {
    return Asking.only(
        Asking.list("/api/parishes").stream().filter(one -> one.get("name").equals(name)).toList());
  }

  @Test
  void a_merger_that_has_not_come_yet_or_into_itself_is_refused() {
    String one = parish(parishOf("sj"));
    refusing
        .unchanged(
            () -> send("/parishes/merger", merger(one, parish(parishOf("ht")), "2027-01-01")))
        .is(400)
        .says("has not come yet");
    refusing
        .unchanged(() -> send("/parishes/merger", merger(one, one, "2026-11-29")))
        .is(422)
        .says("both still stand");
  }

  private static Map<String, List<String>> merger(String from, String into, String since) {
    return Map.of("from", List.of(from), "into", List.of(into), "since", List.of(since));
  }

  private static List<Map<String, Object>> at(String church) {
    return Asking.list("/api/pieces").stream()
        .filter(piece -> piece.get("home").equals(church))
        .toList();
  }

  private static String parishOf(String church) {
    return Asking.list("/api/churches").stream()
        .filter(c -> c.get("slug").equals(church))
        .map(c -> c.get("parish").toString())
        .findFirst()
        .orElseThrow();
  }

  /** As the form sends it. */
  private static String parish(String name) {
    String html = page("/parishes").html();
    Matcher found = Pattern.compile("<option value=\"([^\"]+)\"[^>]*>" + name + "<").matcher(html);
    assertTrue(found.find(), name);
    return found.group(1);
  }
}
