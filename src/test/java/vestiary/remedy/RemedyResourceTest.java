package vestiary.remedy;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.pool.NoteConsent;
import vestiary.scenario.Asking;
import vestiary.scenario.Mending;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.vesting.MassId;

/** The jubilee: three concelebrants, two white sets; and the other clashes of its fortnight. */
@QuarkusTest
class RemedyResourceTest {

  private static final String JUBILEE = "2026-12-08";
  private static final String SUNDAY = "2026-12-06";

  @Inject Scenario scenario;
  @Inject NoteConsent consents;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_shortage_says_what_mends_it_with_least_trouble_first() {
    Map<String, Object> clash = jubilee();

    Map<String, Object> first = Mending.remedies(clash).get(0);

    assertEquals(
        "Bring three matching white sets from Holy Trinity: HT-W1, HT-W2 and HT-W3.",
        first.get("sentence"));
    assertEquals("One drive of 14 minutes by whoever goes.", first.get("costs"));
    assertEquals(1, first.get("n"));
    assertEquals(true, first.get("applicable"));
    assertEquals(1, ((Map<?, ?>) first.get("cost")).get("carriages"));
    assertEquals(14, ((Map<?, ?>) first.get("cost")).get("minutes"));
    assertEquals(first, Mending.remedies(one(clash)).get(0));
  }

  @Test
  void each_kind_of_way_out_is_there_and_advice_says_that_it_is_advice() {
    List<Map<String, Object>> remedies = Mending.remedies(jubilee());

    Set<Object> kinds = new TreeSet<>();
    remedies.forEach(
        one -> kinds.add(((Map<?, ?>) ((List<?>) one.get("changes")).get(0)).get("kind")));
    assertTrue(
        kinds.containsAll(Set.of("carry", "bring-own", "step", "bring-back", "borrow", "buy")),
        kinds.toString());
    for (String advice : List.of("bring-back", "borrow", "buy")) {
      assertEquals(false, Mending.remedy(jubilee(), advice).get("applicable"), advice);
    }
    assertEquals("GIRM 209; RS 124", Mending.remedy(jubilee(), "step").get("source"));
  }

  @Test
  void one_press_mends_the_clash_and_lists_the_journey() {
    Map<String, Object> clash = jubilee();

    Mending.press(clash, 1).then().statusCode(200).body("n", equalTo(1));

    assertFalse(Mending.stands(clash.get("id")));
    Map<String, Object> journey = Asking.only(journeys());
    assertEquals("ht", journey.get("from"));
    assertEquals("sa", journey.get("to"));
    assertEquals("2026-12-08T18:00:00-06:00", journey.get("arriveBy"));
    assertEquals("2026-12-08T17:46:00-06:00", journey.get("leaveBy"));
    assertEquals(6, ((List<?>) journey.get("pieces")).size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"2026-12-05", SUNDAY, JUBILEE})
  void undoing_puts_everything_back_and_doing_it_twice_is_harmless(String date) {
    List<Map<String, Object>> before = Asking.clashes(date, date);
    List<Map<String, Object>> masses = masses(date);
    int applied = 0;
    for (Map<String, Object> clash : before) {
      for (Map<String, Object> remedy : Mending.remedies(clash)) {
        if (remedy.get("applicable").equals(true)) {
          Mending.apply(clash, remedy);
          assertFalse(standsOpen(clash), remedy.toString());

          String address = Mending.address(clash, remedy.get("n"));
          delete(address).then().statusCode(204);
          delete(address).then().statusCode(204);

          applied++;
          assertEquals(masses, masses(date), remedy.toString());
          assertEquals(List.of(), journeys());
        }
      }
    }
    assertTrue(applied > 1, "only %d on %s".formatted(applied, date));
    assertEquals(before, Asking.clashes(date, date));
  }

  @Test
  void a_body_that_is_no_json_is_told() {
    Map<String, Object> clash = jubilee();

    refusing.refused(
        400,
        "unreadable-request",
        () ->
            RestAssured.given()
                .contentType("application/json")
                .body("{")
                .post(Mending.address(clash, 1)));
  }

  @Test
  void a_button_that_is_pressed_twice_is_applied_once() {
    Map<String, Object> clash = jubilee();
    Mending.press(clash, 1).then().statusCode(200);

    Object again =
        refusing.unchanged(
            () -> Mending.press(clash, 1).then().statusCode(200).extract().path("sentence"));

    assertEquals(Mending.remedies(clash).get(0).get("sentence"), again);
    assertEquals(1, journeys().size());
  }

  @Test
  void what_was_read_is_applied_even_if_it_stands_in_another_place_by_now() {
    Map<String, Object> clash = jubilee();
    Map<String, Object> own = Mending.remedy(clash, "bring-own");

    post(Mending.address(clash, 1), Map.of("sentence", own.get("sentence")))
        .then()
        .statusCode(200)
        .body("sentence", equalTo(own.get("sentence")));
  }

  @Test
  void what_is_not_offered_any_more_is_told_and_nothing_is_changed() {
    Map<String, Object> clash = jubilee();
    care("HT-W1-C");

    String detail =
        refusing
            .refused(
                409,
                "taken",
                () ->
                    post(
                        Mending.address(clash, 1),
                        Map.of("fingerprint", Mending.remedies(clash).get(0).get("fingerprint"))))
            .extract()
            .path("detail");

    assertTrue(detail.contains("has changed since you looked"), detail);
    refusing.refused(
        409,
        "taken",
        () -> post(Mending.address(clash, 1), Map.of("sentence", "Bring a hundred sets.")));
  }

  @Test
  void a_clash_that_vanished_meanwhile_is_told() {
    Map<String, Object> clash = jubilee();
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("concelebrants", 2));

    String detail =
        refusing.refused(409, "taken", () -> Mending.press(clash, 1)).extract().path("detail");

    assertTrue(detail.contains("does not stand any more"), detail);
    refusing.notThere(() -> get("/api/clashes/" + clash.get("id")));
  }

  @Test
  void whoever_comes_second_with_something_else_is_told_what_was_done() {
    Map<String, Object> clash = jubilee();
    Map<String, Object> own = Mending.remedy(clash, "bring-own");
    Mending.press(clash, 1).then().statusCode(200);

    String detail =
        refusing
            .refused(
                409,
                "taken",
                () ->
                    post(
                        Mending.address(clash, own.get("n")),
                        Map.of("fingerprint", own.get("fingerprint"))))
            .extract()
            .path("detail");

    assertTrue(detail.startsWith("This is mended already: Bring three matching"), detail);
  }

  @Test
  void of_two_who_press_at_once_for_one_clash_one_is_told() {
    Map<String, Object> clash = jubilee();
    Map<String, Object> own = Mending.remedy(clash, "bring-own");

    List<Integer> answers =
        atOnce(
            () -> Mending.press(clash, 1),
            () ->
                post(
                    Mending.address(clash, own.get("n")),
                    Map.of("fingerprint", own.get("fingerprint"))));

    assertEquals(List.of(200, 409), answers.stream().sorted().toList());
    boolean carried = !journeys().isEmpty();
    boolean brought = !((List<?>) mass().get("brings")).equals(brings());
    assertTrue(carried != brought, "both or neither was done");
  }

  @Test
  void two_who_press_the_same_at_once_have_it_done_once() {
    Map<String, Object> clash = jubilee();

    List<Integer> answers = atOnce(() -> Mending.press(clash, 1), () -> Mending.press(clash, 1));

    assertEquals(List.of(200, 200), answers);
    assertEquals(1, journeys().size());
    assertEquals(6, ((List<?>) journeys().get(0).get("pieces")).size());
  }

  @Test
  void of_two_clashes_that_want_one_piece_at_once_one_is_told() {
    Sending.mass(
        Map.of("church", "sm", "start", "2026-12-08T18:30", "minutes", 90, "concelebrants", 2));
    Map<String, Object> here = jubilee("sa");
    Map<String, Object> there = jubilee("sm");
    Map<String, Object> one = carryOf(here, "HT-W1-C");
    Map<String, Object> other = carryOf(there, "HT-W1-C");

    List<Integer> answers =
        atOnce(
            () -> post(Mending.address(here, one.get("n")), read(one)),
            () -> post(Mending.address(there, other.get("n")), read(other)));

    assertEquals(List.of(200, 409), answers.stream().sorted().toList());
  }

  @Test
  void a_substitute_accepted_by_name_is_worth_knowing_and_asked_for_no_more() {
    Map<String, Object> clash = jubilee();
    Map<String, Object> step = Mending.remedy(clash, "step");

    post(
            Mending.address(clash, step.get("n")),
            Map.of("fingerprint", step.get("fingerprint"), "person", "Father Wexcombe"))
        .then()
        .statusCode(200);

    Map<String, Object> known = known();
    assertTrue(
        known
            .get("sentence")
            .toString()
            .matches(
                ".*: Father Wexcombe in alb and stole, accepted on \\d+ \\w+ \\d{4} \\(GIRM 209; RS 124\\)\\."),
        known.toString());
    assertEquals(2, chasublesAskedFor());
    delete(Mending.address(clash, step.get("n"))).then().statusCode(204);
    assertEquals(3, chasublesAskedFor());
  }

  @Test
  void a_substitute_without_a_name_is_counted() {
    Mending.apply(jubilee(), Mending.remedy(jubilee(), "step"));

    assertTrue(
        known().get("sentence").toString().contains(": One concelebrant in alb and stole, accept"),
        known().toString());
  }

  @Test
  void a_change_of_the_mass_that_leaves_a_substitute_without_meaning_drops_it_and_says_so() {
    Mending.apply(jubilee(), Mending.remedy(jubilee(), "step"));

    Asking.change(mass(), Map.of("concelebrants", 2));

    assertTrue(
        known().get("sentence").toString().contains("counts no more, since the Mass was changed"),
        known().toString());
    assertEquals(2, chasublesAskedFor());
  }

  @Test
  void a_plan_asks_for_nothing_that_a_substitute_stands_for() {
    Mending.apply(jubilee(), Mending.remedy(jubilee(), "step"));

    Map<String, Object> plan = Planning.finished(Planning.ask("2026-12-07", "2026-12-13"));

    assertEquals(
        2,
        Planning.list(plan, "assignments").stream()
            .filter(one -> one.get("mass").equals(mass().get("id")))
            .filter(one -> one.get("kind").equals("chasuble"))
            .count());
  }

  @Test
  void the_third_benediction_is_moved_and_its_cope_is_carried() {
    Map<String, Object> clash = Mending.clash(SUNDAY, "cope");
    Map<String, Object> later = Mending.remedy(clash, "move");
    assertEquals(
        "Begin the Benediction at Our Lady of the Rosary at 17:30 instead of 16:00.",
        later.get("sentence"));

    Mending.apply(clash, later);

    assertEquals(List.of(), shortages(SUNDAY));
    assertEquals("2026-12-06T17:30:00-06:00", Asking.mass("ol", "2026-12-06T17:30").get("start"));
    List<Map<String, Object>> carried =
        Asking.list("/api/movements?from=%s&to=%s".formatted(SUNDAY, SUNDAY));
    assertEquals("2026-12-06T17:00:00-06:00", Asking.only(carried).get("arriveBy"));
    assertEquals(List.of("HT-CP1", "HT-HV1"), Asking.only(carried).get("pieces"));
  }

  @Test
  void a_mass_that_somebody_changed_since_is_not_put_back_over_their_change() {
    Map<String, Object> clash = Mending.clash(SUNDAY, "cope");
    Map<String, Object> later = Mending.remedy(clash, "move");
    Mending.apply(clash, later);
    Asking.change(Asking.mass("ol", "2026-12-06T17:30"), Map.of("start", "2026-12-06T18:00"));

    String detail =
        refusing
            .refused(409, "taken", () -> delete(Mending.address(clash, later.get("n"))))
            .extract()
            .path("detail");

    assertTrue(detail.contains("changed or cancelled by somebody"), detail);
  }

  @Test
  void what_visitors_bring_is_noted_for_the_mass() {
    Mending.apply(jubilee(), Mending.remedy(jubilee(), "bring-own"));

    assertTrue(
        mass().get("brings").toString().contains("role=concelebrant, count=1"), mass().toString());
  }

  @Test
  void a_clash_that_comes_back_can_be_mended_once_more() {
    Map<String, Object> clash = jubilee();
    Mending.press(clash, 1).then().statusCode(200);
    care("HT-W1-C");
    care("HT-W2-C");
    care("HT-W3-C");
    assertTrue(Mending.stands(clash.get("id")));

    Mending.press(clash, 1).then().statusCode(200);

    assertFalse(Mending.stands(clash.get("id")));
  }

  @Test
  void a_plan_that_is_applied_since_takes_the_place_of_what_was_carried() {
    Map<String, Object> clash = jubilee();
    Mending.press(clash, 1).then().statusCode(200);
    Planning.applied("2026-12-07", "2026-12-13");

    delete(Mending.address(clash, 1)).then().statusCode(204);

    assertFalse(Mending.stands(clash.get("id")), "the plan holds");
  }

  @Test
  void advice_cannot_be_pressed() {
    Map<String, Object> clash = jubilee();
    Map<String, Object> borrow = Mending.remedy(clash, "borrow");

    refusing.refused(422, "against-rule", () -> Mending.press(clash, borrow.get("n")));
  }

  @Test
  void what_an_owner_never_lends_is_in_no_remedy_and_what_he_must_be_asked_for_says_so() {
    for (String code : List.of("HT-W1-C", "HT-W2-C", "HT-W3-C")) {
      policy(code, "never");
    }
    policy("SM-W1-C", "asking");

    List<Map<String, Object>> remedies = Mending.remedies(jubilee());

    assertTrue(remedies.stream().noneMatch(one -> one.toString().contains("HT-W1-C")));
    Map<String, Object> asked =
        remedies.stream()
            .filter(one -> one.get("sentence").toString().contains("SM-W1"))
            .findFirst()
            .orElseThrow();
    assertEquals(true, asked.get("onAsking"));
    assertTrue(asked.get("costs").toString().endsWith("must be asked first."), asked.toString());
  }

  @Test
  void what_an_owner_keeps_back_from_a_mass_is_not_carried_to_it_and_after_a_yes_it_is_again() {
    answer(false, "HT-W1-C", "HT-W2-C", "HT-W3-C");

    List<Map<String, Object>> remedies = Mending.remedies(jubilee());

    assertFalse(remedies.isEmpty());
    assertTrue(
        remedies.stream().noneMatch(one -> one.toString().contains("HT-W1-C")),
        remedies.toString());
    answer(true, "HT-W1-C", "HT-W2-C", "HT-W3-C");
    assertTrue(
        Mending.remedies(jubilee()).stream().anyMatch(one -> one.toString().contains("HT-W1-C")));
  }

  private void answer(boolean granted, String... pieces) {
    MassId jubilee = new MassId(UUID.fromString(mass().get("id").toString()));
    scenario.within(
        scenario.ours(),
        () -> consents.note(new NoteConsent.Answer(jubilee, List.of(pieces), granted, "", -1)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "none",
        "2026-12-08",
        "2026-12-08-",
        "2026-12-08-0123456789abcdeg",
        "2026-13-45-0123456789abcdef",
        "0000-00-00-0123456789abcdef",
        "9999-12-31-0123456789abcdef",
        "%27%3B%20drop%20table%20mass",
        "2026-12-08-0123456789ABCDEF"
      })
  void an_id_that_is_none_is_not_there(String id) {
    refusing.notThere(() -> raw().get("/api/clashes/" + id));
    refusing.notThere(() -> raw().post("/api/clashes/" + id + "/remedies/1"));
    refusing.notThere(() -> raw().delete("/api/clashes/" + id + "/remedies/1"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-1", "01", "99", "1.5", "one", "99999999999999999999"})
  void a_place_that_is_none_is_not_there(String place) {
    Map<String, Object> clash = jubilee();

    refusing.notThere(() -> Mending.press(clash, place));
    refusing.notThere(() -> delete(Mending.address(clash, place)));
  }

  @Test
  void what_was_never_applied_cannot_be_undone() {
    Map<String, Object> clash = jubilee();

    refusing.notThere(() -> delete(Mending.address(clash, 1)));
  }

  @Test
  void another_clusters_remedy_is_not_there() {
    Map<String, Object> clash = jubilee();
    Mending.press(clash, 1).then().statusCode(200);

    scenario.becomeAnother();

    refusing.notThere(() -> delete(Mending.address(clash, 1)));
    refusing.refused(409, "taken", () -> Mending.press(clash, 1));
  }

  @Test
  void a_name_that_is_too_long_is_refused_at_its_field() {
    Map<String, Object> clash = jubilee();

    refusing.unfit(
        () -> post(Mending.address(clash, 1), Map.of("person", "x".repeat(201))), "person");
  }

  private static RequestSpecification raw() {
    return RestAssured.given().urlEncodingEnabled(false);
  }

  private static Map<String, Object> one(Map<String, Object> clash) {
    return get("/api/clashes/" + clash.get("id"))
        .then()
        .statusCode(200)
        .extract()
        .jsonPath()
        .getMap("");
  }

  private static Map<String, Object> read(Map<String, Object> remedy) {
    return Map.of("fingerprint", remedy.get("fingerprint"));
  }

  private static Map<String, Object> jubilee() {
    return Mending.clash(JUBILEE, "chasuble");
  }

  private static Map<String, Object> jubilee(String church) {
    Object mass = Asking.mass(church, "2026-12-08T18:30").get("id");
    return Asking.only(
        Asking.clashes(JUBILEE, JUBILEE).stream()
            .filter(one -> "chasuble".equals(one.get("pieceKind")))
            .filter(one -> one.get("masses").equals(List.of(mass)))
            .toList());
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> carryOf(Map<String, Object> clash, String piece) {
    return Mending.remedies(clash).stream()
        .filter(
            one ->
                ((List<Map<String, Object>>) one.get("changes"))
                    .get(0)
                    .get("pieces")
                    .toString()
                    .contains(piece))
        .findFirst()
        .orElseThrow();
  }

  private static Map<String, Object> mass() {
    return Asking.mass("sa", "2026-12-08T18:30");
  }

  private List<?> brings() {
    return List.of(Map.of("role", "principal", "count", 1, "kinds", List.of("chasuble", "stole")));
  }

  private static List<Map<String, Object>> masses(String date) {
    return Asking.list("/api/masses?from=%s&to=%s".formatted(date, date));
  }

  private static List<Map<String, Object>> journeys() {
    return Asking.list("/api/movements?from=2026-11-30&to=2026-12-13");
  }

  private static List<Map<String, Object>> open(String date) {
    return Asking.clashes(date, date).stream()
        .filter(one -> !one.get("severity").equals("know"))
        .toList();
  }

  private static List<Map<String, Object>> shortages(String date) {
    return open(date).stream()
        .filter(one -> List.of("shortage", "unreachable").contains(one.get("kind")))
        .toList();
  }

  private static boolean standsOpen(Map<String, Object> clash) {
    return open(clash.get("id").toString().substring(0, 10)).stream()
        .anyMatch(one -> one.get("id").equals(clash.get("id")));
  }

  private static Map<String, Object> known() {
    return Asking.only(
        Asking.clashes(JUBILEE, JUBILEE).stream()
            .filter(one -> one.get("severity").equals("know"))
            .toList());
  }

  private static long chasublesAskedFor() {
    return Asking.list("/api/masses/%s/needs".formatted(mass().get("id"))).stream()
        .filter(one -> one.get("kind").equals("chasuble"))
        .count();
  }

  private static void care(String piece) {
    post(
            "/api/pieces/%s/care".formatted(piece),
            Map.of("from", JUBILEE, "to", JUBILEE, "reason", "Wax"))
        .then()
        .statusCode(201);
  }

  private static void policy(String piece, String policy) {
    Map<String, Object> body = get("/api/pieces/" + piece).jsonPath().getMap("");
    Sending.put("/api/pieces/" + piece, Sending.with(body, "ownerPolicy", policy))
        .then()
        .statusCode(200);
  }

  @SafeVarargs
  private static List<Integer> atOnce(Supplier<Response>... requests) {
    return Stream.of(requests)
        .map(request -> CompletableFuture.supplyAsync(() -> request.get().statusCode()))
        .toList()
        .stream()
        .map(CompletableFuture::join)
        .toList();
  }
}
