package vestiary.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.MailServerOfTests;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithSmtp;
import vestiary.users.LettingIn;

/** A sacristan hears within minutes of what has changed since the letter of the week, and once. */
@QuarkusTest
@TestProfile(WithSmtp.class)
class SacristiesTest {

  private static final String SACRISTAN = "ysolde@home.example";
  private static final LocalDate FRIDAY = LocalDate.of(2026, 12, 4);

  /** On that Friday, by the scenario's clock after the letters left. */
  private static final Instant CHANGED = Instant.parse("2026-12-04T18:00:00Z");

  @Inject Scenario scenario;
  @Inject Lettering letters;
  @Inject LettingIn letting;
  @Inject KeepToldSacristies told;
  @Inject ChooseLetters choices;

  @ConfigProperty(name = "quarkus.mailer.port")
  int port;

  private MailServerOfTests smtp;
  private UUID sacristan;

  @BeforeEach
  void the_sacristan_of_holy_trinity_was_told_of_a_planned_week() {
    scenario.load();
    sacristan = letting.named("ysolde", "Ysolde Hatherby", Role.SACRISTAN, "ht");
    letting.writtenTo(sacristan, SACRISTAN);
    Sending.mass("ht", "2026-12-08T18:30");
    Planning.applied("2026-12-05", "2026-12-11");
    scenario.within(scenario.ours(), () -> told.keep(told.see(FRIDAY)));
    smtp = new MailServerOfTests(port);
    smtp.start();
  }

  @AfterEach
  void stop() {
    smtp.close();
  }

  @Test
  void many_changes_are_one_letter_and_never_another() {
    Map<String, Object> confirmation = Asking.mass("ht", "2026-12-05T10:30");
    Asking.change(confirmation, Map.of("start", "2026-12-05T11:00"));
    Asking.change(Asking.mass("ht", "2026-12-05T11:00"), Map.of("start", "2026-12-05T11:15"));
    Sending.post("/api/reservations", Map.of("set", "HT-W3", "mass", mass("2026-12-08T18:30")))
        .then()
        .statusCode(201);

    look(Duration.ofMinutes(2));
    assertEquals(List.of(), smtp.received());
    look(Duration.ofMinutes(6));
    look(Duration.ofMinutes(60));

    MailServerOfTests.Received letter = Asking.only(smtp.received());
    assertEquals(SACRISTAN, letter.to());
    assertEquals("Changed: what is to be set out in Holy Trinity", letter.header("Subject"));
    for (String part :
        List.of(
            "Ysolde Hatherby,",
            "Moved: was Saturday 5 December, 10:30, is now Saturday 5 December, 11:15.",
            "Set out by 10:15, no longer by 09:30.",
            "Set aside now: HT-W3.")) {
      assertTrue(letter.words().contains(part), part + " not in: " + letter.words());
    }
    assertFalse(letter.words().contains("11:00"), letter.words());
  }

  @Test
  void what_is_again_as_it_was_and_what_is_another_church_s_is_no_news() {
    Asking.change(Asking.mass("ht", "2026-12-05T10:30"), Map.of("start", "2026-12-05T11:00"));
    Asking.change(Asking.mass("ht", "2026-12-05T11:00"), Map.of("start", "2026-12-05T10:30"));
    Asking.change(Asking.mass("sa", "2026-12-06T10:45"), Map.of("note", "Coffee afterwards"));

    look(Duration.ofMinutes(6));

    assertEquals(List.of(), smtp.received());
  }

  @Test
  void a_mass_that_is_cancelled_and_a_journey_that_is_not_made_are_told_in_their_language() {
    scenario.within(
        scenario.ours(), () -> choices.choose(sacristan, new LetterWish(true, true, true, "es")));
    Sending.delete("/api/masses/" + mass("2026-12-05T10:30")).then().statusCode(204);
    Planning.applied("2026-12-05", "2026-12-05");

    look(Duration.ofMinutes(16));

    String words = Asking.only(smtp.received()).words();
    for (String part :
        List.of(
            "No se celebra aquí: no hay que preparar nada para ella.",
            "Este viaje ya no se hace.",
            "Resuelto: Faltan piezas libres a esa hora: dalmática, rojo.")) {
      assertTrue(words.contains(part), part + " not in: " + words);
    }
  }

  @Test
  void a_clash_at_their_church_is_told_and_that_it_is_mended() {
    Map<String, Object> mass = Asking.mass("ht", "2026-12-08T18:30");
    Asking.change(mass, Map.of("colour", "violet"));
    look(Duration.ofMinutes(6));
    String said = "A colour is chosen that the norms do not allow for it.";
    assertTrue(Asking.only(smtp.received()).words().contains(said));

    Asking.change(Asking.mass("ht", "2026-12-08T18:30"), Map.of("colour", "white"));
    look(Duration.ofMinutes(6));

    String last = smtp.received().get(1).words();
    assertTrue(last.contains("Mended: " + said), last);
  }

  @Test
  void whoever_wants_none_has_none_and_chooses_so_on_their_own_page() {
    String session = letting.session(sacristan);
    Page page =
        Page.of(LettingIn.browser(session).get("/letters/mine").asString())
            .says("A letter at once when something changes at a church I care for");
    LettingIn.browser(session)
        .formParam("form-token", LettingIn.formToken(page.html()))
        .formParam("week", "true")
        .formParam("changes", "true")
        .formParam("asks-sacristy", "true")
        .formParam("language", "")
        .post("/letters/mine")
        .then()
        .statusCode(303);
    Asking.change(Asking.mass("ht", "2026-12-05T10:30"), Map.of("start", "2026-12-05T11:00"));

    look(Duration.ofMinutes(6));

    assertEquals(List.of(), smtp.received());
  }

  @Test
  void what_is_past_is_not_told() {
    Asking.change(Asking.mass("ht", "2026-12-05T10:30"), Map.of("start", "2026-12-05T11:00"));

    look(Duration.ofDays(2));

    assertEquals(List.of(), smtp.received());
  }

  private static String mass(String start) {
    return Asking.mass("ht", start).get("id").toString();
  }

  /** As the jobs do so long after the last change. */
  private void look(Duration after) {
    letters.tellSacristies(CHANGED, CHANGED.plus(after));
  }
}
