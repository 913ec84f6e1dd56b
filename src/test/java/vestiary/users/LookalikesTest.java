package vestiary.users;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.PASSWORD;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.access.Role;
import vestiary.problem.Refused;
import vestiary.scenario.Scenario;

/** Source: Unicode Technical Standard 39, 4 and 5.2. */
@QuarkusTest
class LookalikesTest {

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Lookalikes lookalikes;

  @BeforeEach
  void a_real_cluster() {
    scenario.load();
  }

  /** The l and the I, o and 0, rn and m; all Cyrillic; wide letters; ligature. */
  @ParameterizedTest
  @CsvSource({
    "paul, pau1",
    "paul, PauI",
    "otto, 0tt0",
    "marnie, mamie",
    "cocoa, сосоа",
    "anne, ａｎｎｅ",
    "fiona, ﬁona"
  })
  void nobody_is_let_in_under_a_name_that_looks_like_anothers(String known, String like) {
    letting.user(known, Role.READER);

    Refused refused = assertThrows(Refused.class, () -> letting.user(like, Role.ADMINISTRATOR));

    assertEquals("login", refused.refusal().faults().get(0).field());
    assertTrue(refused.getMessage().contains("somebody else's"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(strings = {"pаul", "annе", "ΑΒcd"})
  void a_name_in_letters_of_several_scripts_is_refused(String mixed) {
    Refused refused = assertThrows(Refused.class, () -> letting.user(mixed, Role.READER));

    assertTrue(refused.getMessage().contains("several scripts"), refused.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "paula",
        "josé.maria",
        "Fr. O’Brien",
        "søren",
        "Мария",
        "μαρία",
        "山田太郎",
        "piers@home.example"
      })
  void names_as_people_have_them_are_taken(String login) {
    assertTrue(lookalikes.findFault(login, List.of("paul", "anne", "piers")).isEmpty(), login);
  }

  @Test
  void whoever_types_the_same_letters_in_another_way_comes_in() {
    letting.withPassword("jos\u00E9", Role.READER);

    for (String typed : List.of("Jose\u0301", "jos\u00E9\u200B")) {
      LettingIn.browser()
          .contentType("application/x-www-form-urlencoded; charset=UTF-8")
          .formParams(Map.of("login", typed, "password", PASSWORD))
          .post("/sign-in")
          .then()
          .statusCode(303);
    }
  }
}
