package vestiary.pool;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class SetResourceTest {

  private static final Map<String, Object> WHITE =
      Map.of("code", "HT-W1", "suit", "Trinity whites");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
  }

  @Test
  void a_set_is_entered_with_its_suit() {
    post("/api/sets", Map.of("code", "HT-W1", "name", "The best", "suit", "Trinity whites"))
        .then()
        .statusCode(201)
        .body("code", equalTo("HT-W1"))
        .body("name", equalTo("The best"))
        .body("suit", equalTo("Trinity whites"))
        .body("pieces", equalTo(List.of()));
    get("/api/sets/HT-W1").then().statusCode(200).body("suit", equalTo("Trinity whites"));
  }

  @Test
  void a_set_names_its_pieces_by_code() {
    for (String code : List.of("HT-W1-S", "HT-W1-C")) {
      Sending.piece(
          Map.of(
              "code",
              code,
              "kind",
              code.endsWith("C") ? "chasuble" : "stole",
              "colours",
              List.of("white"),
              "home",
              "ht",
              "set",
              "HT-W1"));
    }

    get("/api/sets/HT-W1")
        .then()
        .body("pieces", equalTo(List.of("HT-W1-C", "HT-W1-S")))
        .body("suit", nullValue());
  }

  @Test
  void a_set_is_renamed_and_leaves_its_suit() {
    post("/api/sets", WHITE).then().statusCode(201);

    put("/api/sets/HT-W1", Map.of("code", "HT-W9"))
        .then()
        .statusCode(200)
        .body("code", equalTo("HT-W9"))
        .body("suit", nullValue());

    get("/api/sets/HT-W1").then().statusCode(404);
  }

  @Test
  void a_set_broken_up_leaves_its_pieces_in_the_pool() {
    Sending.piece(
        Map.of(
            "code",
            "HT-W1-C",
            "kind",
            "chasuble",
            "colours",
            List.of("white"),
            "home",
            "ht",
            "set",
            "HT-W1"));

    delete("/api/sets/HT-W1").then().statusCode(204);

    assertEquals(List.of(), Asking.list("/api/sets"));
    get("/api/pieces/HT-W1-C").then().statusCode(200).body("set", nullValue());
  }

  @Test
  void a_code_is_given_once() {
    post("/api/sets", WHITE).then().statusCode(201);
    post("/api/sets", Map.of("code", "HT-W2")).then().statusCode(201);

    refusing.refused(409, "taken", () -> post("/api/sets", WHITE));
    refusing.refused(409, "taken", () -> put("/api/sets/HT-W2", WHITE));
  }

  @Test
  void an_unfit_field_is_refused_by_name() {
    refusing.unfit(() -> post("/api/sets", Map.of()), "code");
    refusing.unfit(() -> post("/api/sets", Map.of("code", "c".repeat(41))), "code");
    refusing.unfit(
        () -> post("/api/sets", Map.of("code", "HT-W1", "suit", "s".repeat(201))), "suit");
    refusing.unfit(
        () -> post("/api/sets", Map.of("code", "HT-W1", "name", "n".repeat(2001))), "name");
  }

  @Test
  void an_unknown_set_is_not_there() {
    refusing.notThere(() -> get("/api/sets/HT-W9"));
    refusing.notThere(() -> put("/api/sets/HT-W9", WHITE));
    refusing.notThere(() -> delete("/api/sets/HT-W9"));
  }
}
