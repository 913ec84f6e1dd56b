package vestiary.web;

import static io.restassured.RestAssured.given;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Whoever reads Spanish is answered in it, page, form and refusal alike. */
@QuarkusTest
class LanguageTest {

  private static final String WEEK = "/week/2026-12-07";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void a_spanish_browser_is_shown_the_week_in_spanish() {
    Response answer = browser("es-MX,es;q=0.9,en;q=0.5").get(WEEK);

    assertEquals("es", answer.getHeader("Content-Language"));
    assertTrue(answer.getHeaders().getValues("Vary").toString().contains("Accept-Language"));
    Page week = Page.of(answer.asString()).isHeaded("7 al 13 de diciembre de 2026");
    assertTrue(week.html().contains("<html lang=\"es\">"));
    week.says(
            "Semana",
            "Tres concelebrantes necesitan blanco; hay dos juegos de color blanco",
            "martes",
            "Bienaventurada Virgen María",
            "Planear esta semana")
        .keepsSilentOn("Plan this week", "The week", "Tuesday", "concelebrants need");
  }

  @Test
  void what_went_out_is_told_in_the_language_of_whoever_reads_not_of_whoever_sent_it() {
    Page.of(browser("es").get("/out").asString())
        .says("dalmática de color blanco")
        .keepsSilentOn("white dalmatic");
    Page.of(browser("en").get("/out").asString()).says("white dalmatic");
  }

  @Test
  void a_spanish_browser_reads_in_the_history_what_a_piece_was() {
    Sending.delete("/api/pieces/HT-G1-C").then().statusCode(204);

    Page.of(browser("es").get("/history").asString())
        .says("casulla", "libremente")
        .keepsSilentOn("clase chasuble", "freely");
  }

  @Test
  void a_spanish_browser_is_told_why_a_day_is_as_it_is() {
    Page.of(browser("es").get("/day/2026-12-07").asString())
        .says(
            "El lunes 7 de diciembre de 2026 cae en la segunda semana de Adviento.",
            "blanco, por un santo que no fue mártir (IGMR 346 a)",
            "La Misa de la tarde es ya del día siguiente, La Inmaculada Concepción")
        .keepsSilentOn("White, for", "is in the second week", "The evening Mass", "(GIRM");
  }

  @Test
  void the_year_is_set_out_in_spanish_and_its_calendar_file_is_the_same_for_all() {
    Page.of(browser("es").get("/year/2027").asString())
        .isHeaded("El año litúrgico 2027")
        .says("Puede usarse el color rosa.", "Se omite: San Nicolás, obispo", "por la tarde:")
        .keepsSilentOn("Rose may be worn", "Left out", "evening:");
    assertEquals(
        browser("en").get("/year/2027.ics").asString(),
        browser("es").get("/year/2027.ics").asString());
  }

  @Test
  void mass_times_and_changes_are_told_in_spanish_and_kept_as_they_are() {
    Page.of(browser("es").get("/patterns").asString())
        .says("Domingos a las ")
        .keepsSilentOn("Sundays at");
    String english = given().get("/api/history").body().asString();
    assertEquals(
        english, given().header("Accept-Language", "es").get("/api/history").body().asString());
  }

  @Test
  void a_choice_is_kept_on_the_device_and_taken_back_there() {
    Response chosen = browser("en").redirects().follow(false).get("/language?to=es&back=" + WEEK);
    assertEquals(303, chosen.statusCode());
    assertTrue(chosen.getHeader("Location").endsWith(WEEK));
    String kept = chosen.getCookie(Written.COOKIE);

    Page spanish = Page.of(browser("en").cookie(Written.COOKIE, kept).get(WEEK).asString());
    spanish.says("Semana").links("/language?to=en&back=" + WEEK);

    Page english = Page.of(browser("es").cookie(Written.COOKIE, "en").get(WEEK).asString());
    english.isHeaded("7 to 13 December 2026").keepsSilentOn("Semana");
    assertTrue(english.html().contains("<html lang=\"en\">"));
  }

  @Test
  void nobody_is_led_elsewhere_by_a_choice() {
    Response chosen =
        browser("en").redirects().follow(false).get("/language?to=es&back=//elsewhere.example");
    assertTrue(chosen.getHeader("Location").endsWith("/week"));
    browser("en").get("/language?to=tlh").then().statusCode(404);
  }

  @Test
  void a_form_says_in_spanish_what_is_wrong_and_keeps_what_was_typed() {
    Response answer =
        browser("es")
            .contentType("application/x-www-form-urlencoded; charset=UTF-8")
            .formParam("name", "<i>Capilla</i>")
            .formParam("slug", "")
            .post("/churches");

    assertEquals(400, answer.statusCode());
    Page form = Page.of(answer.asString());
    form.says("Guardar", "Nombre", "No se guardó nada").faults("slug", "Esto falta.");
    assertTrue(form.html().contains("&lt;i&gt;Capilla&lt;/i&gt;"), "what was typed stays text");
  }

  @Test
  void what_is_chosen_from_and_what_is_kept_as_a_term_is_told_in_spanish_too() {
    for (String form : List.of("/vestments", "/vestments/new", "/churches/new")) {
      Page.of(browser("es").get(form).asString()).says("blanco").keepsSilentOn(">white<");
    }
    Sending.piece("HT-X9", "dalmatic", "white", "ht");

    Page.of(browser("es").get("/history").asString())
        .says("clase dalmática", "clase estola diaconal", "clase casulla");
  }

  @Test
  void programs_are_told_in_the_language_that_they_ask_for() {
    given()
        .header("Accept-Language", "es")
        .get("/api/churches/nowhere")
        .then()
        .statusCode(404)
        .body("detail", containsString("No se encuentra: iglesia \"nowhere\""));
    given()
        .get("/api/churches/nowhere")
        .then()
        .body("detail", containsString("There is no church \"nowhere\""));
  }

  @Test
  void what_goes_out_is_told_in_spanish_and_kept_in_english() {
    given()
        .header("Accept-Language", "es")
        .contentType("application/json")
        .body(Map.of("church", "sa", "due", "2026-12-02"))
        .post("/api/sets/HT-W1/out")
        .then()
        .statusCode(200);

    List<Object> kept = Asking.list("/api/out").stream().map(one -> one.get("what")).toList();
    assertTrue(kept.containsAll(List.of("white chasuble", "white stole")), kept.toString());
    Page.of(browser("es").get("/s/HT-W1").asString())
        .says("Fuera, en Saint Anne", "debe volver el miércoles 2 de diciembre")
        .keepsSilentOn("Out at", "Wednesday", "Belongs at");
  }

  @Test
  void what_is_signed_reads_the_same_for_readers_of_both() {
    String english = fingerprint("en");
    assertEquals(english, fingerprint("es"));
    assertTrue(english.matches("[0-9a-f]{16,}"), english);
  }

  @Test
  void a_cluster_of_one_language_is_shown_in_it_and_offers_no_other() {
    Sending.put("/api/settings", Map.of("languages", List.of("en"))).then().statusCode(200);

    browser("es")
        .get(WEEK)
        .then()
        .header("Content-Language", equalTo("en"))
        .body(not(containsString("/language?to=")));
  }

  @Test
  void a_cluster_that_speaks_spanish_first_is_shown_in_it_to_whoever_asks_for_neither() {
    Sending.put("/api/settings", Map.of("languages", List.of("es", "en"))).then().statusCode(200);

    browser("pl").get(WEEK).then().header("Content-Language", equalTo("es"));
    browser("not a language;;").get(WEEK).then().header("Content-Language", equalTo("es"));
  }

  private static String fingerprint(String language) {
    String html = browser(language).get("/review/2026-12-07").asString();
    int at = html.indexOf("name=\"seen\" value=\"") + "name=\"seen\" value=\"".length();
    return html.substring(at, html.indexOf('"', at));
  }

  private static RequestSpecification browser(String languages) {
    return given().accept("text/html,*/*;q=0.8").header("Accept-Language", languages);
  }
}
