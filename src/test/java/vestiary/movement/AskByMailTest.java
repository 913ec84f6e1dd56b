package vestiary.movement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.mail.Postman;
import vestiary.scenario.Asking;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.WithMail;

/** Where a mail server is named, whoever is asked gets one mail. */
@QuarkusTest
@TestProfile(WithMail.class)
class AskByMailTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject MockMailbox mailbox;
  @Inject Postman postman;

  private Object trip;

  @BeforeEach
  void a_journey_and_no_mail() {
    scenario.load();
    Planning.applied(Journeys.MONDAY, Journeys.SUNDAY);
    trip = Journeys.all().get(0).get("id");
    mailbox.clear();
  }

  @Test
  void the_mail_says_what_where_and_when_and_leads_to_the_page() {
    ask(Map.of("carrier", "Greta Holm", "mail", "greta@home.example"));

    Mail mail = Asking.only(mailbox.getMailsSentTo("greta@home.example"));
    Map<String, Object> one = Journeys.one(trip);
    assertTrue(mail.getSubject().startsWith("Can you carry vestments on "), mail.getSubject());
    String text = mail.getText();
    for (String part :
        List.of(
            "Greta Holm",
            one.get("leaveBy").toString().substring(11, 16),
            ((List<?>) one.get("pieces")).get(0).toString(),
            "https://vestments.example/movements/" + trip)) {
      assertTrue(text.contains(part), part + " not in: " + text);
    }
    assertFalse(text.contains("Oakhallow"), text);
  }

  @Test
  void asking_once_mails_once_and_another_asking_once_more() {
    ask(Map.of("carrier", "Greta Holm", "mail", "greta@home.example"));
    post("/api/movements/%s/ask".formatted(trip), Map.of("carrier", "Greta Holm"))
        .then()
        .statusCode(409);
    page("/movements/" + trip);
    assertEquals(1, mailbox.getTotalMessagesSent());

    post("/api/movements/%s/withdraw".formatted(trip), Map.of()).then().statusCode(204);
    ask(Map.of("carrier", "Greta Holm"));
    assertEquals(2, mailbox.getTotalMessagesSent());
  }

  @Test
  void whose_address_is_not_known_is_asked_without() {
    ask(Map.of("carrier", "Ansel Brook"));

    assertEquals(0, mailbox.getTotalMessagesSent());
    page("/movements/" + trip).says("Ansel Brook was asked");
  }

  @Test
  void an_address_is_kept_and_forgotten_and_shown_to_nobody() {
    put("/api/people/cosmas-ilverton/mail", Map.of("address", "cosmas@home.example"))
        .then()
        .statusCode(204);
    assertFalse(Asking.list("/api/people").toString().contains("cosmas@"));
    ask(Map.of("carrier", "cosmas-ilverton"));
    assertEquals(1, mailbox.getMailsSentTo("cosmas@home.example").size());
    page("/movements/" + trip).keepsSilentOn("cosmas@");

    delete("/api/people/cosmas-ilverton/mail").then().statusCode(204);
    refusing.notThere(() -> delete("/api/people/nobody/mail"));
    refusing.unfit(
        () -> put("/api/people/cosmas-ilverton/mail", Map.of("address", "a@b\nBcc: c@d")),
        "address");
  }

  private void ask(Map<String, String> body) {
    post("/api/movements/%s/ask".formatted(trip), body).then().statusCode(200);
    scenario.within(scenario.ours(), postman::deliver);
  }
}
