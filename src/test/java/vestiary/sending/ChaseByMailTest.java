package vestiary.sending;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.post;
import static vestiary.scenario.Sending.put;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.mail.MailServer;
import vestiary.mail.Outbox;
import vestiary.mail.Postman;
import vestiary.mail.ReaderLanguages;
import vestiary.pool.ReadPool;
import vestiary.scenario.Asking;
import vestiary.scenario.Scenario;
import vestiary.scenario.WithMail;
import vestiary.users.MailReaders;
import vestiary.users.PublicAddress;

/**
 * Where a mail server is named, whoever has what is overdue is asked for it, once a day at most.
 */
@QuarkusTest
@TestProfile(WithMail.class)
class ChaseByMailTest {

  @Inject Scenario scenario;
  @Inject MockMailbox mailbox;
  @Inject Postman postman;
  @Inject MailServer mail;
  @Inject SentPieceRows sent;
  @Inject SendingWords words;
  @Inject OverdueMailRows mails;
  @Inject MailReaders readers;
  @Inject ReaderLanguages languages;
  @Inject Outbox outbox;
  @Inject ReadPool pool;
  @Inject PublicAddress here;

  @BeforeEach
  void a_set_that_is_due_on_the_second() {
    scenario.load();
    post("/api/sets/HT-W1/out", Map.of("church", "sa", "due", "2026-12-02", "signer", "Greta Holm"))
        .then()
        .statusCode(200);
    Map<String, Object> greta =
        Asking.only(
            Asking.list("/api/people").stream()
                .filter(one -> one.get("name").equals("Greta Holm"))
                .toList());
    put("/api/people/%s/mail".formatted(greta.get("slug")), Map.of("address", "greta@home.example"))
        .then()
        .statusCode(204);
    mailbox.clear();
  }

  @Test
  void nobody_is_asked_before_it_is_due_nor_at_night() {
    look("2026-12-02T18:00:00Z");
    look("2026-12-03T13:00:00Z");

    assertEquals(0, mailbox.getTotalMessagesSent());
  }

  @Test
  void whoever_signed_for_it_is_asked_on_the_day_after() {
    look("2026-12-03T15:00:00Z");

    Mail asked = Asking.only(mailbox.getMailsSentTo("greta@home.example"));
    assertEquals("HT-W1 was due back on Wednesday 2 December", asked.getSubject());
    for (String part :
        List.of(
            "HT-W1-C, white chasuble and HT-W1-S, white stole",
            "owner     Holy Trinity",
            "with      Saint Anne, since Monday 30 November, 06:00",
            "Wednesday 2 December, one day overdue",
            "https://vestments.example/s/HT-W1")) {
      assertTrue(asked.getText().contains(part), part + " not in: " + asked.getText());
    }
  }

  @Test
  void it_is_written_in_the_language_of_the_cluster_where_nobody_chose_another() {
    put("/api/settings", Map.of("languages", List.of("es", "en"))).then().statusCode(200);

    look("2026-12-03T15:00:00Z");

    Mail asked = Asking.only(mailbox.getMailsSentTo("greta@home.example"));
    assertEquals("HT-W1 debía volver el miércoles 2 de diciembre", asked.getSubject());
    for (String part :
        List.of(
            "casulla de color blanco",
            "dueño     Holy Trinity",
            "con       Saint Anne, desde el lunes 30 de noviembre, 06:00",
            "miércoles 2 de diciembre, con un día de retraso")) {
      assertTrue(asked.getText().contains(part), part + " not in: " + asked.getText());
    }
  }

  @Test
  void never_twice_for_the_same_day_and_then_week_by_week() {
    look("2026-12-03T15:00:00Z");
    look("2026-12-03T19:00:00Z");
    assertEquals(1, mailbox.getTotalMessagesSent());

    look("2026-12-04T15:00:00Z");
    look("2026-12-09T15:00:00Z");
    assertEquals(1, mailbox.getTotalMessagesSent());

    look("2026-12-10T15:00:00Z");
    assertEquals(2, mailbox.getTotalMessagesSent());
  }

  @Test
  void once_it_is_back_nobody_is_asked() {
    post("/api/sets/HT-W1/back", Map.of()).then().statusCode(200);

    look("2026-12-03T15:00:00Z");

    assertEquals(0, mailbox.getTotalMessagesSent());
  }

  /** As the job does at that moment. */
  private void look(String moment) {
    Clock then = Clock.fixed(Instant.parse(moment), ZoneOffset.UTC);
    ReadSent readSent = new ReadSent(sent, pool, then);
    ChaseOverdue chase =
        new ChaseOverdue(
            mail, readSent, words, mails, readers, languages, outbox, pool, here, then);
    scenario.within(scenario.ours(), chase::today);
    scenario.within(scenario.ours(), postman::deliver);
  }
}
