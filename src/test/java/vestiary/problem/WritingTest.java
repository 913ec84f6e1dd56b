package vestiary.problem;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Letters that are not what they seem, in whatever people write. */
@QuarkusTest
class WritingTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void an_empty_cluster() {
    scenario.empty();
  }

  /** A null, a bell, a C1 control; direction overrides and isolates; half a pair. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Saint\u0000Anne",
        "Saint\u0007Anne",
        "Saint\u0085Anne",
        "Saint\u202EennA",
        "\u2066Saint\u2069Anne",
        "Saint\u200FAnne",
        "Saint\u061CAnne",
        "Saint\uD800Anne"
      })
  void a_control_character_is_refused_with_its_number(String name) {
    int unfit = Writing.findUnfit(name).orElseThrow();

    refusing.unfit(() -> church("sa", name), "name");
    assertTrue(
        church("sa", name).path("detail").toString().contains("U+%04X".formatted(unfit)), name);
  }

  @Test
  void what_nobody_sees_is_left_away() {
    church("sa", "\uFEFFSa\u200Bint\u00AD An\u2060ne\u200D ").then().statusCode(201);

    Sending.get("/api/churches/sa").then().body("name", equalTo("Saint Anne"));
  }

  /** Unicode Standard Annex 15: both spellings of é are one letter. */
  @Test
  void the_same_letters_are_kept_in_the_same_way() {
    church("sj", "San Jose\u0301").then().statusCode(201);

    Sending.get("/api/churches/sj").then().body("name", equalTo("San Jos\u00E9"));
  }

  @Test
  void joiners_stay_where_a_script_needs_them_and_so_do_lines_of_a_note() {
    assertEquals("می\u200Cخواهم", Writing.tidy("می\u200Cخواهم"));
    assertEquals("क्\u200Dष", Writing.tidy("क्\u200Dष"));
    assertEquals("one\ntwo\tthree", Writing.tidy(" one\ntwo\tthree\n"));
    assertTrue(Writing.findUnfit("one\r\ntwo").isEmpty());
  }

  private static io.restassured.response.Response church(String slug, String name) {
    return Sending.post("/api/churches", Map.of("slug", slug, "name", name));
  }
}
