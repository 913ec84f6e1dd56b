package vestiary.users;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.users.LettingIn.browser;
import static vestiary.users.LettingIn.formToken;
import static vestiary.users.LettingIn.tries;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.mail.Postman;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithMail;

/** Whoever forgot the password is mailed a link, at an address that was proven. */
@QuarkusTest
@TestProfile(WithMail.class)
class RecoveryTest {

  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private static final String HOME = "piers@home.example";
  private static final String FRESH = "candle nutmeg harbour eleven";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Traces traces;
  @Inject MockMailbox mailbox;
  @Inject Postman postman;
  @Inject OwnerDatabase database;

  private UUID piers;

  @BeforeEach
  void somebody_with_a_password() {
    scenario.load();
    mailbox.clear();
    piers = letting.withPassword("piers", Role.READER);
  }

  @Test
  void a_mail_leads_to_a_new_password_once_and_within_half_an_hour() throws SQLException {
    scenario.within(scenario.ours(), () -> traces.provenMail(piers, HOME));

    ask("PIERS").then().statusCode(303).header("Location", endsWith("/recovery?sent=yes"));

    String link = link(awaitMail(HOME), "/welcome/");
    // The tests' clock stands still at noon (UTC).
    assertEquals(Instant.parse("2026-11-30T12:30:00Z"), linkEnds());
    browser()
        .formParams(Map.of("password", FRESH, "again", FRESH))
        .post(link)
        .then()
        .statusCode(303);
    browser().get(link).then().statusCode(404).body(containsString("used already"));
    tries("piers", FRESH).then().statusCode(303);
    tries("piers", LettingIn.PASSWORD).then().statusCode(400);
  }

  @Test
  void the_list_of_letters_knows_whoever_was_mailed_though_he_is_of_the_schedule_too() {
    Map<String, Object> entry =
        Map.of(
            "login",
            "piers",
            "name",
            "Piers U.",
            "role",
            "reader",
            "churches",
            List.of(),
            "person",
            "piers-underlarch");
    Sending.put("/api/users/" + piers, entry).then().statusCode(200);
    scenario.within(scenario.ours(), () -> traces.provenMail(piers, HOME));

    ask("piers").then().statusCode(303);
    awaitMail(HOME);

    Browsing.page("/letters").says("Piers U., a new password").keepsSilentOn("who is gone");
  }

  @Test
  void whether_somebody_has_that_name_or_an_address_is_not_told() {
    letting.user("nell", Role.READER);
    UUID last = letting.user("orla", Role.READER);
    scenario.within(scenario.ours(), () -> traces.provenMail(last, "orla@home.example"));

    Response unknown = ask("nobody");
    Response withoutAddress = ask("nell");
    Response known = ask("orla");

    assertEquals(said(known), said(unknown));
    assertEquals(said(known), said(withoutAddress));
    awaitMail("orla@home.example");
    // They are written one after the other, so the others' would have left before.
    assertEquals(1, mailbox.getTotalMessagesSent());
    browser().get("/recovery?sent=yes").then().body(containsString("a mail is on its way"));
  }

  @Test
  void after_three_for_one_name_the_next_waits_whether_anybody_has_it_or_not() {
    for (String name : List.of("piers", "nobody")) {
      for (int i = 0; i < 3; i++) {
        ask(name).then().statusCode(303);
      }
      ask(name).then().statusCode(429).body(containsString("There were too many tries."));
    }
    tries("piers", LettingIn.PASSWORD).then().statusCode(303);
  }

  @Test
  void an_address_counts_once_the_link_that_was_mailed_there_is_opened_and_pressed() {
    String session = letting.session(piers);
    String token = formToken(browser(session).get("/account").asString());

    keep(session, token, HOME, "wrong")
        .then()
        .statusCode(400)
        .body(containsString("This is not your present password."));
    keep(session, token, "no address", LettingIn.PASSWORD)
        .then()
        .statusCode(400)
        .body(containsString("is no mail address"));
    keep(session, token, HOME, LettingIn.PASSWORD).then().statusCode(303);
    String link = link(awaitMail(HOME), "/mail/");
    account(session).then().body(containsString("None counts yet."));
    browser().get(link).then().statusCode(200).body(containsString("Is " + HOME + " yours?"));
    account(session).then().body(containsString("None counts yet."));
    browser().post(link).then().statusCode(200).body(containsString(HOME + " counts"));

    account(session).then().body(containsString("a link is sent to " + HOME));
    browser().get(link).then().statusCode(404);
    mailbox.clear();
    ask("piers");
    awaitMail(HOME);
  }

  @Test
  void the_old_address_counts_until_the_new_one_does_and_both_can_be_forgotten() {
    scenario.within(scenario.ours(), () -> traces.provenMail(piers, HOME));
    String session = letting.session(piers);
    String token = formToken(browser(session).get("/account").asString());

    keep(session, token, "piers@new.example", LettingIn.PASSWORD).then().statusCode(303);
    account(session)
        .then()
        .body(containsString("a link is sent to " + HOME))
        .body(containsString("piers@new.example waits"));

    browser(session)
        .formParam("form-token", token)
        .post("/account/mail/removal")
        .then()
        .statusCode(303);
    account(session).then().body(not(containsString("piers@")));
  }

  @Test
  void the_history_knows_that_an_address_was_kept_and_not_which() throws SQLException {
    scenario.within(scenario.ours(), () -> traces.provenMail(piers, HOME));

    assertEquals(
        List.of("entered {} {}"),
        database(
            "select deed || ' ' || before || ' ' || after from audit where kind = 'user_mail'"));
  }

  private Response ask(String login) {
    return browser().formParam("login", login).post("/recovery");
  }

  private static List<String> said(Response answer) {
    return List.of(
        String.valueOf(answer.statusCode()), answer.header("Location"), answer.asString());
  }

  private static Response keep(String session, String token, String mail, String password) {
    return browser(session)
        .formParams(Map.of("form-token", token, "mail", mail, "mail-password", password))
        .post("/account/mail");
  }

  private static Response account(String session) {
    return browser(session).get("/account");
  }

  private Mail awaitMail(String to) {
    Instant deadline = Instant.now().plus(PATIENCE);
    while (mailbox.getMailsSentTo(to).isEmpty()) {
      scenario.within(scenario.ours(), postman::deliver);
      assertTrue(Instant.now().isBefore(deadline), "no mail came to " + to);
      LockSupport.parkNanos(Duration.ofMillis(20).toNanos());
    }
    return mailbox.getMailsSentTo(to).get(0);
  }

  /** The path of the link; the mail names the public address before it. */
  private static String link(Mail mail, String path) {
    String text = mail.getText();
    int start = text.indexOf(WithMail.ADDRESS + path);
    assertTrue(start >= 0, text);
    return text.substring(start + WithMail.ADDRESS.length()).split("\\s")[0];
  }

  private Instant linkEnds() throws SQLException {
    return Instant.parse(
        database(
                "select to_char(ends_at at time zone 'UTC', 'YYYY-MM-DD\"T\"HH24:MI:SS\"Z\"') from user_link")
            .get(0));
  }

  private List<String> database(String query) throws SQLException {
    try (Connection connection = database.getConnection();
        Statement statement = connection.createStatement();
        ResultSet found = statement.executeQuery(query)) {
      List<String> rows = new ArrayList<>();
      while (found.next()) {
        rows.add(found.getString(1));
      }
      return rows;
    }
  }
}
