package vestiary.schedule;

import static io.restassured.RestAssured.get;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.MassKind;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Which Masses may be said at an hour. Source: GIRM 371 to 381. */
@QuarkusTest
class RulingResourceTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void one_church() {
    scenario.empty();
    Sending.church("ht");
  }

  @Test
  void every_kind_has_a_verdict_a_sentence_and_its_norm() {
    List<Map<String, Object>> rulings =
        Asking.list("/api/rulings?church=ht&start=2026-12-06T10:30");

    assertEquals(MassKind.values().length, rulings.size());
  }

  /** GIRM 372: a wedding on a Sunday of Advent takes the Mass of the Sunday. */
  @Test
  void what_is_not_permitted_says_what_to_do_instead_and_takes_the_days_colour() {
    get("/api/rulings?church=ht&start=2026-12-06T10:30")
        .then()
        .statusCode(200)
        .body("find { it.mass == 'wedding' }.verdict", equalTo("not-permitted"))
        .body(
            "find { it.mass == 'wedding' }.sentence", containsString("within the Mass of the day"))
        .body("find { it.mass == 'wedding' }.source", equalTo("GIRM 372"))
        .body("find { it.mass == 'wedding' }.celebrations[0].colours", equalTo(List.of("violet")));
  }

  /** GIRM 376: on a weekday of Advent by the judgement of the rector or the celebrant. */
  @Test
  void a_leave_that_is_recorded_makes_a_votive_mass_lawful() {
    String votive = "find { it.mass == 'votive' }.verdict";

    get("/api/rulings?church=ht&start=2026-12-16T10:30&votiveOf=the Holy Spirit")
        .then()
        .body(votive, equalTo("not-permitted"));
    get("/api/rulings?church=ht&start=2026-12-16T10:30&votiveOf=the Holy Spirit&leave=rector")
        .then()
        .body(votive, equalTo("with-leave"));
  }

  @ParameterizedTest
  @CsvSource({
    "start=2026-12-06T10:30, church",
    "church=ht, start",
    "church=ht&start=soon, start",
    "church=ht&start=1969-12-06T10:30, start",
    "church=ht&start=2026-12-06T10:30&leave=mine, leave"
  })
  void a_question_that_cannot_be_answered_is_refused_at_its_field(String query, String field) {
    refusing.unfit(() -> get("/api/rulings?" + query), field);
  }

  @Test
  void an_unknown_church_is_not_there() {
    refusing.notThere(() -> get("/api/rulings?church=zz&start=2026-12-06T10:30"));
  }
}
