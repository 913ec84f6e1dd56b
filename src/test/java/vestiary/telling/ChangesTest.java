package vestiary.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.cluster.ReadCluster;
import vestiary.mail.MailServer;
import vestiary.people.FindPeople;
import vestiary.scenario.Asking;
import vestiary.scenario.MailServerOfTests;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithSmtp;

/** Whoever has a Mass that is moved, cancelled or given to another hears of it within minutes. */
@QuarkusTest
@TestProfile(WithSmtp.class)
class ChangesTest {

  private static final String COSMAS = "cosmas@home.example";
  private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");
  private static final String ODO = "odo@home.example";
  private static final List<Map<String, String>> READER =
      List.of(Map.of("person", "odo-larkspire", "role", "reader"));
  private static final String AMBROSE = "ambrose@home.example";

  @Inject Scenario scenario;
  @Inject Lettering letters;
  @Inject MailServer mail;
  @Inject ReadCluster cluster;
  @Inject FindPeople people;
  @Inject ChooseLetters choices;

  @ConfigProperty(name = "quarkus.mailer.port")
  int port;

  private MailServerOfTests smtp;

  @BeforeEach
  void two_priests_can_be_written_to_and_nothing_is_to_be_told() {
    scenario.load();
    Sending.put("/api/people/cosmas-ilverton/mail", Map.of("address", COSMAS))
        .then()
        .statusCode(204);
    Sending.put("/api/people/ambrose-tarnwick/mail", Map.of("address", AMBROSE))
        .then()
        .statusCode(204);
    letters.keepSilentOnChanges();
    smtp = new MailServerOfTests(port);
    smtp.start();
  }

  @AfterEach
  void stop() {
    smtp.close();
  }

  @Test
  void a_mass_that_is_moved_is_told_with_the_old_hour_and_the_new() {
    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("start", "2026-12-06T11:15"));

    look(Duration.ofMinutes(2));
    assertEquals(List.of(), smtp.received());
    look(Duration.ofMinutes(6));
    look(Duration.ofMinutes(30));

    MailServerOfTests.Received letter = Asking.only(smtp.received());
    assertEquals(COSMAS, letter.to());
    assertEquals("Changed: Sunday 6 December, 11:15, Saint Anne", letter.header("Subject"));
    assertTrue(
        letter
            .words()
            .contains(
                "Moved: was Sunday 6 December, 10:45, Saint Anne, is now Sunday 6 December, 11:15, Saint Anne."),
        letter.words());
  }

  @Test
  void who_serves_hears_that_the_mass_is_moved_or_cancelled() {
    Sending.put("/api/people/odo-larkspire/mail", Map.of("address", ODO)).then().statusCode(204);
    for (String date : List.of("2026-12-06T10:45", "2026-12-13T10:45")) {
      serve(mass("sa", date), READER);
    }
    letters.keepSilentOnChanges();
    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("start", "2026-12-06T11:15"));
    Sending.delete("/api/masses/" + mass("sa", "2026-12-13T10:45").get("id"));

    look(Duration.ofMinutes(6));

    String words = to(ODO).words();
    assertTrue(words.contains("Moved: was Sunday 6 December, 10:45, Saint Anne"), words);
    assertTrue(words.contains("Cancelled"), words);
  }

  @Test
  void ten_changes_are_one_letter() {
    for (String date : List.of("2026-12-02", "2026-12-09", "2026-12-16")) {
      Asking.change(mass("sa", date + "T08:00"), Map.of("start", date + "T08:15"));
      Asking.change(mass("sa", date + "T08:15"), Map.of("start", date + "T08:30"));
    }

    look(Duration.ofMinutes(6));

    MailServerOfTests.Received letter = Asking.only(smtp.received());
    assertEquals("3 changes to your Masses", letter.header("Subject"));
    assertFalse(letter.words().contains("08:15"), letter.words());
  }

  @Test
  void what_is_again_as_it_was_is_no_news() {
    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("start", "2026-12-06T11:15"));
    Asking.change(mass("sa", "2026-12-06T11:15"), Map.of("start", "2026-12-06T10:45"));

    look(Duration.ofMinutes(6));

    assertEquals(List.of(), smtp.received());
  }

  @Test
  void both_hear_of_a_mass_that_is_given_to_another() {
    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("celebrant", "ambrose-tarnwick"));

    look(Duration.ofMinutes(6));

    assertTrue(
        to(COSMAS).words().contains("You are named here no more; Father Ambrose Tarnwick is."),
        to(COSMAS).words());
    assertTrue(to(AMBROSE).words().contains("You are named here now."), to(AMBROSE).words());
  }

  @Test
  void whoever_is_named_while_away_hears_that_too() {
    Sending.post(
            "/api/people/ambrose-tarnwick/absences",
            Map.of("from", "2026-12-06", "to", "2026-12-06"))
        .then()
        .statusCode(201);
    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("celebrant", "ambrose-tarnwick"));

    look(Duration.ofMinutes(6));

    String words = to(AMBROSE).words();
    assertTrue(words.contains("You are named here now."), words);
    assertTrue(
        words.contains("You are away then; another is to be named to celebrate: Second Sunday"),
        words);
  }

  @Test
  void whoever_is_to_read_hears_that_he_is_named_and_that_he_is_no_more() {
    Sending.put("/api/people/odo-larkspire/mail", Map.of("address", ODO)).then().statusCode(204);
    Map<String, Object> mass = mass("sa", "2026-12-06T10:45");

    serve(mass, READER);
    look(Duration.ofMinutes(6));
    serve(mass, List.of());
    look(Duration.ofMinutes(30));

    List<MailServerOfTests.Received> told = smtp.received();
    assertEquals(List.of(ODO, ODO), told.stream().map(m -> m.to()).toList());
    assertTrue(told.get(0).words().contains("You are named here now."), told.get(0).words());
    assertTrue(told.get(1).words().contains("You are named here no more."), told.get(1).words());
  }

  private static void serve(Map<String, Object> mass, List<Map<String, String>> who) {
    Sending.put("/api/masses/%s/serving".formatted(mass.get("id")), Map.of("serving", who))
        .then()
        .statusCode(200);
  }

  @Test
  void a_mass_that_is_cancelled_is_told_and_a_past_one_is_not() {
    Sending.delete("/api/masses/" + mass("sa", "2026-12-06T10:45").get("id"))
        .then()
        .statusCode(204);
    look(Duration.ofMinutes(6));
    assertTrue(to(COSMAS).words().contains("Cancelled: "), to(COSMAS).words());

    Sending.delete("/api/masses/" + mass("ol", "2026-11-20T09:00").get("id"))
        .then()
        .statusCode(204);
    look(Duration.ofMinutes(6));

    assertEquals(1, smtp.received().size());
  }

  @Test
  void whoever_wants_no_such_letters_has_none() {
    UUID cosmas =
        UUID.fromString(
            Asking.only(
                    Asking.list("/api/people").stream()
                        .filter(one -> "cosmas-ilverton".equals(one.get("slug")))
                        .toList())
                .getOrDefault("id", cosmasByName())
                .toString());
    scenario.within(
        scenario.ours(), () -> choices.choose(cosmas, new LetterWish(true, false, true, "")));

    Asking.change(mass("sa", "2026-12-06T10:45"), Map.of("start", "2026-12-06T11:15"));
    look(Duration.ofMinutes(6));

    assertEquals(List.of(), smtp.received());
  }

  private UUID cosmasByName() {
    UUID[] found = new UUID[1];
    scenario.within(
        scenario.ours(), () -> found[0] = people.findBySlug("cosmas-ilverton").orElseThrow().id());
    return found[0];
  }

  private static Map<String, Object> mass(String church, String start) {
    return Asking.mass(church, start);
  }

  private MailServerOfTests.Received to(String address) {
    return Asking.only(smtp.received().stream().filter(m -> m.to().equals(address)).toList());
  }

  /** As the jobs do so long after the last change. */
  private void look(Duration after) {
    letters.tellChanges(NOON, NOON.plus(after));
  }
}
