package vestiary.telling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.cluster.ReadCluster;
import vestiary.mail.MailServer;
import vestiary.mail.Postman;
import vestiary.movement.ReadDriving;
import vestiary.people.FindPeople;
import vestiary.plan.ReadMovements;
import vestiary.planning.CheckClashes;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.MailServerOfTests;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithSmtp;
import vestiary.users.LettingIn;
import vestiary.users.MailReaders;

/**
 * On Friday at nine each sacristan and everybody who is named at a Mass has a letter about the week
 * to come, once, and may end it by one press.
 */
@QuarkusTest
@TestProfile(WithSmtp.class)
class WeekLettersTest {

  private static final String PRIEST = "cosmas@home.example";
  private static final String SACRISTAN = "ysolde@home.example";

  /** Nine on Friday 4 December by the scenario's clock. */
  private static final Instant DUE = Instant.parse("2026-12-04T15:00:00Z");

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject MailServer mail;
  @Inject SettleTelling settings;
  @Inject WeekToldRows told;
  @Inject ReadCluster cluster;
  @Inject CheckClashes check;
  @Inject ReadMovements movements;
  @Inject ReadDriving driving;
  @Inject MailReaders readers;
  @Inject KeepToldSacristies sacristies;
  @Inject FindPeople people;
  @Inject ChooseLetters choices;
  @Inject PostLetter post;
  @Inject Postman postman;

  @ConfigProperty(name = "quarkus.mailer.port")
  int port;

  private MailServerOfTests smtp;

  @BeforeEach
  void a_priest_and_a_sacristan_can_be_written_to() {
    scenario.load();
    Sending.put("/api/people/cosmas-ilverton/mail", Map.of("address", PRIEST))
        .then()
        .statusCode(204);
    UUID sacristan = letting.named("ysolde", "Ysolde Hatherby", Role.SACRISTAN, "ht");
    letting.writtenTo(sacristan, SACRISTAN);
    smtp = new MailServerOfTests(port);
    smtp.start();
  }

  @AfterEach
  void stop() {
    smtp.close();
  }

  @Test
  void before_friday_at_nine_nothing_is_written_and_a_day_later_neither() {
    look(DUE.minusSeconds(1));
    look(DUE.plusSeconds(24 * 3600));

    assertEquals(List.of(), smtp.received());
  }

  @Test
  void each_has_one_letter_with_what_is_theirs() {
    Planning.applied("2026-12-05", "2026-12-11");
    look(DUE);
    look(DUE.plusSeconds(600));

    String priest = only(PRIEST).words();
    assertEquals(
        "Your week: Saturday 5 December to Friday 11 December", only(PRIEST).header("Subject"));
    for (String part :
        List.of(
            "Father Cosmas Ilverton,",
            "* Saturday 5 December, 17:00, Our Lady of the Rosary",
            "You celebrate: of Sunday, Second Sunday of Advent; colour: violet.",
            "You wear: chasuble and stole.",
            "https://vestments.example/mine",
            "<li><b>Saturday 5 December, 17:00, Our Lady of the Rosary")) {
      assertTrue(priest.contains(part), part + " not in: " + priest);
    }
    String sacristan = only(SACRISTAN).words();
    for (String part :
        List.of(
            "Ysolde Hatherby,",
            "* Saturday 5 December, 10:30",
            "Set out by 09:30.",
            "Confirmation; colour: red.",
            "5 concelebrants and 2 deacons",
            "Lay out ",
            "What leaves Holy Trinity")) {
      assertTrue(sacristan.contains(part), part + " not in: " + sacristan);
    }
    assertFalse(sacristan.contains("Our Lady of the Rosary, Mill"), sacristan);
  }

  /** Three concelebrants and two white sets: counted by hand from the scenario's list of stock. */
  @Test
  void a_sacristan_reads_what_cannot_stand_and_what_is_needed_where_no_plan_says_which() {
    UUID sacristan = letting.named("nell", "Nell Marchpane", Role.SACRISTAN, "sa");
    letting.writtenTo(sacristan, "nell@home.example");

    look(DUE);

    String words = only("nell@home.example").words();
    for (String part :
        List.of(
            "4 Masses and other liturgies. 5 things cannot stand.",
            "What cannot stand in Saint Anne\n\n* Sunday 6 December, 10:45",
            "* Tuesday 8 December, 18:30\n  Too few are free at this hour: chasuble, white; 3 needed, 2 there.",
            "Needed: 3 chasubles, 3 stoles, 2 deacons’ stoles and 2 dalmatics.",
            "No plan says yet which.",
            "What cannot stand, why, and what mends it: https://vestments.example/clashes?from=2026-12-05&to=2026-12-11")) {
      assertTrue(words.replace("\r", "").contains(part), part + " not in: " + words);
    }
  }

  @Test
  void who_is_away_then_is_told_that_another_is_to_be_named_and_not_what_he_wears() {
    Sending.post(
            "/api/people/cosmas-ilverton/absences",
            Map.of("from", "2026-12-05", "to", "2026-12-11"))
        .then()
        .statusCode(201);
    Planning.applied("2026-12-05", "2026-12-11");

    look(DUE);

    assertTrue(only(SACRISTAN).words().contains("Father Cosmas Ilverton (not available then)"));
    String words = only(PRIEST).words();
    assertTrue(
        words.contains(
            "You are away then; another is to be named to celebrate: of Sunday, Second Sunday of"
                + " Advent; colour: violet."),
        words);
    assertTrue(words.contains("No Mass; named while away: "), words);
    for (String part : List.of("You celebrate", "You wear", "Set out for you")) {
      assertFalse(words.contains(part), part + " in: " + words);
    }
  }

  @Test
  void who_serves_at_a_mass_of_the_week_has_a_letter_too() {
    Sending.put("/api/people/odo-larkspire/mail", Map.of("address", "odo@home.example"))
        .then()
        .statusCode(204);
    Sending.put(
            "/api/masses/%s/serving".formatted(Asking.mass("ht", "2026-12-05T10:30").get("id")),
            Map.of("serving", List.of(Map.of("person", "odo-larkspire"))))
        .then()
        .statusCode(200);

    look(DUE);

    String words = only("odo@home.example").words();
    for (String part :
        List.of(
            "* Saturday 5 December, 10:30, Holy Trinity",
            "You read: confirmation; colour: red.",
            "Nothing is asked of the vestments of the cluster.")) {
      assertTrue(words.contains(part), part + " not in: " + words);
    }
  }

  @Test
  void whoever_chose_spanish_has_it_in_spanish() {
    send(PRIEST);
    choose(stop(PRIEST), Map.of("week", "true", "changes", "true", "language", "es"));

    lookNextWeek();

    String letter = last(PRIEST).words();
    for (String part :
        List.of(
            "P. Cosmas Ilverton:", "Usted celebra: ", "color: morado.", "Usted viste: casulla")) {
      assertTrue(letter.contains(part), part + " not in: " + letter);
    }
    assertEquals("es", last(PRIEST).header("Content-Language"));
  }

  @Test
  void whoever_drives_is_called_in_the_language_of_the_letter() {
    Planning.applied("2026-12-05", "2026-12-11");
    look(DUE);
    String english = only(SACRISTAN).words();
    choose(stop(SACRISTAN), Map.of("week", "true", "changes", "true", "language", "es"));

    Planning.applied("2026-12-12", "2026-12-18");
    lookNextWeek();

    assertTrue(english.contains(", with Father "), english);
    String spanish = last(SACRISTAN).words();
    assertTrue(spanish.contains(", con P. "), spanish);
    assertFalse(spanish.contains("Father"), spanish);
  }

  @Test
  void opening_the_link_changes_nothing_and_one_press_ends_the_letters_without_sign_in() {
    send(PRIEST);
    String link = stop(PRIEST);
    assertEquals("List-Unsubscribe=One-Click", last(PRIEST).header("List-Unsubscribe-Post"));
    assertEquals(
        "<https://vestments.example%s>".formatted(link), last(PRIEST).header("List-Unsubscribe"));

    Page.of(nobody().get(link).then().statusCode(200).extract().asString())
        .says("Send me no more letters of the week");
    // As mail programs send it: RFC 8058, 3.2.
    nobody()
        .contentType("application/x-www-form-urlencoded")
        .body("List-Unsubscribe=One-Click")
        .post(link)
        .then()
        .statusCode(200);
    lookNextWeek();

    assertEquals(1, smtp.received().stream().filter(m -> m.to().equals(PRIEST)).count());
    assertEquals(2, smtp.received().stream().filter(m -> m.to().equals(SACRISTAN)).count());
    choose(link, Map.of("week", "true", "language", ""));
    Page.of(nobody().get(link).asString()).says("Send me no more letters of the week");
  }

  @Test
  void the_page_that_stops_letters_speaks_as_they_do_whatever_the_device_is_set_to() {
    send(PRIEST);
    String link = stop(PRIEST);
    choose(link, Map.of("week", "true", "language", "es"));

    String page = nobody().header("Accept-Language", "en").get(link).asString();

    Page.of(page).says("Deciden el obispo diocesano");
    assertTrue(page.contains("<html lang=\"es\""), page);
  }

  @Test
  void a_link_that_nobody_was_sent_opens_nothing() {
    send(PRIEST);
    String link = stop(PRIEST);

    nobody().get(link.substring(0, link.length() - 4) + "AAAA").then().statusCode(404);
    nobody().post("/letters/stop/x").then().statusCode(404);
    nobody().formParam("language", "tlh").post(link + "/choice").then().statusCode(400);
  }

  @Test
  void what_people_write_is_no_part_of_the_page() {
    Map<String, Object> mass = Asking.mass("ht", "2026-12-05T10:30");
    Asking.change(mass, Map.of("note", "<script>alert(1)</script> & more"));

    look(DUE);

    String words = only(SACRISTAN).words();
    assertTrue(words.contains("<br>&lt;script&gt;alert(1)&lt;/script&gt; &amp; more"), words);
  }

  @Test
  void who_has_signed_in_chooses_under_their_own_name() {
    UUID user = letting.user("nell", Role.READER);
    letting.writtenTo(user, "nell@home.example");
    String session = letting.session(user);
    Page page =
        Page.of(LettingIn.browser(session).get("/letters/mine").asString())
            .says("They go to nell@home.example.");
    Page.of(
            LettingIn.browser(session)
                .header("Accept-Language", "es")
                .get("/letters/mine")
                .asString())
        .says("Qué cartas quiere")
        .keepsSilentOn("Which letters");
    LettingIn.browser(session)
        .formParam("form-token", LettingIn.formToken(page.html()))
        .formParam("changes", "true")
        .formParam("language", "es")
        .post("/letters/mine")
        .then()
        .statusCode(303);

    LetterWish[] wish = new LetterWish[1];
    scenario.within(scenario.ours(), () -> wish[0] = choices.of(user));

    assertEquals(new LetterWish(false, true, true, "es"), wish[0]);
  }

  @Test
  void another_day_and_hour_are_the_cluster_s_to_choose() {
    Browsing.send(
            "/letters/settings",
            Map.of("weekday", List.of("4"), "hour", List.of("18:30"), "officeDays", List.of("10")))
        .leadsTo("/letters?done=saved");

    look(Instant.parse("2026-12-04T00:29:00Z"));
    assertEquals(List.of(), smtp.received());
    look(Instant.parse("2026-12-04T00:31:00Z"));

    assertEquals(2, smtp.received().size());
    Browsing.send("/letters/settings", Map.of("hour", List.of("noon"))).is(400);
  }

  private void send(String to) {
    look(DUE);
    assertTrue(smtp.received().stream().anyMatch(m -> m.to().equals(to)));
  }

  private void lookNextWeek() {
    look(DUE.plusSeconds(7 * 24 * 3600));
  }

  /** As the jobs do at that moment. */
  private void look(Instant moment) {
    Clock then = Clock.fixed(moment, ZoneOffset.UTC);
    WriteWeekLetters write =
        new WriteWeekLetters(
            mail,
            settings,
            told,
            cluster,
            check,
            movements,
            driving,
            readers,
            sacristies,
            people,
            choices,
            post,
            then);
    scenario.within(scenario.ours(), write::look);
    scenario.within(scenario.ours(), postman::deliver);
  }

  private static void choose(String link, Map<String, String> form) {
    nobody().formParams(form).post(link + "/choice").then().statusCode(303);
  }

  private static RequestSpecification nobody() {
    return LettingIn.browser();
  }

  private String stop(String to) {
    return last(to).header("List-Unsubscribe").replaceAll("[<>]|https://vestments.example", "");
  }

  private MailServerOfTests.Received only(String to) {
    return Asking.only(smtp.received().stream().filter(m -> m.to().equals(to)).toList());
  }

  private MailServerOfTests.Received last(String to) {
    List<MailServerOfTests.Received> all =
        smtp.received().stream().filter(m -> m.to().equals(to)).toList();
    return all.get(all.size() - 1);
  }
}
