package vestiary.pool;

import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;
import static vestiary.scenario.Sending.with;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import jakarta.inject.Inject;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class PieceResourceTest {

  private static final Map<String, Object> MINIMAL =
      Map.of("code", "HT-W1-C", "kind", "chasuble", "colours", List.of("white"), "home", "ht");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
  }

  @Test
  void code_kind_colour_and_home_are_enough() {
    post("/api/pieces", MINIMAL)
        .then()
        .statusCode(201)
        .header("Location", endsWith("/api/pieces/HT-W1-C"))
        .body("code", equalTo("HT-W1-C"))
        .body("owner", equalTo("Church of ht"))
        .body("ownerPolicy", equalTo("freely"))
        .body("staysHome", equalTo(false))
        .body("care", equalTo(List.of()))
        .body("set", nullValue());
  }

  @Test
  void everything_that_is_given_is_kept() {
    Map<String, Object> whole =
        Map.ofEntries(
            Map.entry("code", "HT-W4-C"),
            Map.entry("kind", "chasuble"),
            Map.entry("colours", List.of("gold", "white")),
            Map.entry("shade", "old gold"),
            Map.entry("grade", "solemn"),
            Map.entry("size", "132"),
            Map.entry("form", "full"),
            Map.entry("set", "HT-W4"),
            Map.entry("suit", "Jubilee gold"),
            Map.entry("home", "ht"),
            Map.entry("owner", "Fintan Oakhallow"),
            Map.entry("ownerPolicy", "asking"),
            Map.entry("condition", "good"),
            Map.entry("place", "Press 2"),
            Map.entry("staysHome", true));

    post("/api/pieces", whole).then().statusCode(201);

    Map<String, Object> kept = get("/api/pieces/HT-W4-C").jsonPath().getMap("");
    whole.forEach((field, value) -> assertEquals(value, kept.get(field), field));
  }

  @Test
  void linen_is_white_without_anybody_saying_so() {
    post("/api/pieces", Map.of("code", "HT-A1", "kind", "alb", "home", "ht"))
        .then()
        .statusCode(201)
        .body("colours", equalTo(List.of("white")));
  }

  @Test
  void a_colour_named_twice_counts_once() {
    post("/api/pieces", with(MINIMAL, "colours", List.of("gold", "white", "gold")))
        .then()
        .body("colours", equalTo(List.of("gold", "white")));
  }

  @Test
  void pieces_are_listed_by_code_and_by_church() {
    Sending.church("sa");
    Sending.piece("SA-W1-C", "chasuble", "white", "sa");
    Sending.piece("HT-W2-C", "chasuble", "white", "ht");
    Sending.piece("HT-W1-C", "chasuble", "white", "ht");

    assertEquals(List.of("HT-W1-C", "HT-W2-C", "SA-W1-C"), codes("/api/pieces"));
    assertEquals(List.of("SA-W1-C"), codes("/api/pieces?church=sa"));
    refusing.notThere(() -> get("/api/pieces?church=nowhere"));
  }

  @Test
  void a_piece_is_changed_and_gets_another_code() {
    post("/api/pieces", with(MINIMAL, "place", "Press 1")).then().statusCode(201);

    put("/api/pieces/HT-W1-C", with(MINIMAL, "code", "HT-W9-C"))
        .then()
        .statusCode(200)
        .body("code", equalTo("HT-W9-C"))
        .body("place", nullValue());

    get("/api/pieces/HT-W1-C").then().statusCode(404);
  }

  @Test
  void a_change_need_not_repeat_the_code() {
    Sending.piece(MINIMAL);

    put("/api/pieces/HT-W1-C", Map.of("kind", "chasuble", "colours", List.of("red"), "home", "ht"))
        .then()
        .statusCode(200)
        .body("code", equalTo("HT-W1-C"))
        .body("colours", equalTo(List.of("red")));
  }

  @Test
  void a_piece_that_names_an_unknown_set_makes_it() {
    Sending.piece(with(MINIMAL, "set", "HT-W1"));

    Map<String, Object> set = Asking.only(Asking.list("/api/sets"));
    assertEquals("HT-W1", set.get("code"));
    assertEquals(List.of("HT-W1-C"), set.get("pieces"));
  }

  @Test
  void the_set_goes_with_its_last_piece() {
    Sending.piece(with(MINIMAL, "set", "HT-W1"));
    Sending.piece(with(with(with(MINIMAL, "set", "HT-W1"), "code", "HT-W1-S"), "kind", "stole"));

    delete("/api/pieces/HT-W1-C").then().statusCode(204);
    assertEquals(1, Asking.list("/api/sets").size());
    delete("/api/pieces/HT-W1-S").then().statusCode(204);

    assertEquals(List.of(), Asking.list("/api/sets"));
    assertEquals(List.of(), Asking.list("/api/pieces"));
  }

  @Test
  void a_set_that_its_last_piece_leaves_goes_too() {
    Sending.piece(with(MINIMAL, "set", "HT-W1"));

    put("/api/pieces/HT-W1-C", with(MINIMAL, "set", "HT-W2")).then().statusCode(200);

    assertEquals(
        List.of("HT-W2"), Asking.list("/api/sets").stream().map(s -> s.get("code")).toList());
  }

  @Test
  void a_piece_in_care_can_be_taken_out_of_the_pool() {
    Sending.piece(MINIMAL);
    post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-01", "reason", "Moths"))
        .then()
        .statusCode(201);

    delete("/api/pieces/HT-W1-C").then().statusCode(204);

    get("/api/pieces/HT-W1-C").then().statusCode(404);
  }

  @Test
  void a_code_is_given_once() {
    Sending.piece(MINIMAL);
    Sending.piece(with(MINIMAL, "code", "HT-W2-C"));

    refusing.refused(409, "taken", () -> post("/api/pieces", MINIMAL));
    refusing.refused(409, "taken", () -> put("/api/pieces/HT-W2-C", MINIMAL));
  }

  @Test
  void capitals_do_not_matter_in_a_code() {
    Sending.piece(MINIMAL);

    get("/api/pieces/ht-w1-c").then().statusCode(200).body("code", equalTo("HT-W1-C"));
    refusing.refused(409, "taken", () -> post("/api/pieces", with(MINIMAL, "code", "ht-w1-c")));
  }

  @ParameterizedTest
  @CsvSource({
    "kind, hat, kind",
    "grade, royal, grade",
    "ownerPolicy, sometimes, ownerPolicy",
    "home, nowhere, home",
    "code, '', code",
    "code, HT W1, code",
    "code, -W1, code",
    "code, HT/W1, code",
    "kind, '', kind"
  })
  void an_unfit_field_is_refused_by_name(String field, String value, String fault) {
    refusing.unfit(() -> post("/api/pieces", with(MINIMAL, field, value)), fault);
  }

  @Test
  void blue_is_no_liturgical_colour() {
    // GIRM 346 names white, red, green, violet, black and rose; blue is not among them.
    refusing.unfit(
        () -> post("/api/pieces", with(MINIMAL, "colours", List.of("white", "blue"))), "colours");
    refusing.unfit(
        () -> post("/api/pieces", with(MINIMAL, "colours", Arrays.asList("white", null))),
        "colours");
    refusing.unfit(() -> post("/api/pieces", with(MINIMAL, "colours", List.of())), "colours");
  }

  @Test
  void a_text_that_is_too_long_is_refused() {
    Map<String, Object> inSet = with(MINIMAL, "set", "HT-W1");

    refusing.unfit(() -> post("/api/pieces", with(MINIMAL, "code", "c".repeat(41))), "code");
    refusing.unfit(() -> post("/api/pieces", with(MINIMAL, "set", "s".repeat(41))), "set");
    refusing.unfit(() -> post("/api/pieces", with(inSet, "suit", "s".repeat(201))), "suit");
    refusing.unfit(() -> post("/api/pieces", with(MINIMAL, "place", "p".repeat(2001))), "place");
  }

  @Test
  void missing_fields_are_all_told_at_once() {
    refusing.unfit(() -> post("/api/pieces", Map.of()), "code", "kind", "colours", "home");
  }

  @Test
  void a_change_that_is_refused_leaves_the_piece_as_it_was() {
    Sending.piece(MINIMAL);

    refusing.unfit(
        () -> put("/api/pieces/HT-W1-C", with(with(MINIMAL, "kind", "hat"), "home", "x")),
        "kind",
        "home");
  }

  @ParameterizedTest
  @ValueSource(strings = {"HT-W9-C", "HT-W1", "%20"})
  void an_unknown_piece_is_not_there(String code) {
    Sending.piece(MINIMAL);

    refusing.notThere(
        () -> RestAssured.given().urlEncodingEnabled(false).get("/api/pieces/" + code));
    refusing.notThere(
        () -> RestAssured.given().urlEncodingEnabled(false).delete("/api/pieces/" + code));
  }

  private static List<Object> codes(String address) {
    return Asking.list(address).stream().map(p -> p.get("code")).toList();
  }
}
