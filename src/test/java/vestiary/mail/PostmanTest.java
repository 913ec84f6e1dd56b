package vestiary.mail;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.scenario.Browsing;
import vestiary.scenario.MailServerOfTests;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithSmtp;
import vestiary.users.LettingIn;

/** Letters reach a mail server that speaks SMTP: none is lost, and none comes twice. */
@QuarkusTest
@TestProfile(WithSmtp.class)
class PostmanTest {

  private static final Instant NOON = Instant.parse("2026-11-30T12:00:00Z");
  private static final String HOME = "piers@home.example";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Outbox outbox;
  @Inject LetterRows rows;
  @Inject MailServer server;
  @Inject ReaderAddresses addresses;
  @Inject DoorLinks doors;

  @ConfigProperty(name = "quarkus.mailer.port")
  int port;

  private MailServerOfTests smtp;
  private UUID piers;

  @BeforeEach
  void somebody_who_can_be_written_to() {
    scenario.load();
    piers = letting.user("piers", Role.READER);
    letting.writtenTo(piers, HOME);
    smtp = new MailServerOfTests(port);
    smtp.start();
  }

  @AfterEach
  void stop() {
    smtp.close();
  }

  @Test
  void a_letter_leaves_with_both_forms_and_nothing_of_it_is_kept() {
    enter("one");

    deliver(NOON);

    MailServerOfTests.Received mail = only();
    assertEquals(HOME, mail.to());
    assertEquals("Something about one", mail.header("Subject"));
    assertEquals("auto-generated", mail.header("Auto-Submitted"));
    assertEquals("en", mail.header("Content-Language"));
    assertEquals("<https://vestments.example/letters/stop/x>", mail.header("List-Unsubscribe"));
    assertEquals("List-Unsubscribe=One-Click", mail.header("List-Unsubscribe-Post"));
    assertTrue(mail.words().contains("Plain words about one"), mail.words());
    assertTrue(mail.words().contains("<p>Words about one</p>"), mail.words());
    LetterRow row = row("one");
    assertEquals("sent", row.state);
    assertEquals("", row.subject + row.plain + row.html + row.stopLink);
    assertEquals("<%s@parishes.example>".formatted(row.id), mail.header("Message-ID"));
  }

  @Test
  void of_two_letters_about_the_same_the_second_is_not_kept() {
    enter("same");
    enter("same");

    deliver(NOON);
    deliver(NOON.plus(Duration.ofHours(1)));

    assertEquals(1, smtp.received().size());
  }

  @Test
  void what_comes_to_nothing_tells_nobody() {
    assertThrows(
        IllegalStateException.class,
        () ->
            scenario.within(
                scenario.ours(),
                () -> {
                  outbox.enter(letter("undone"));
                  throw new IllegalStateException("the change comes to nothing");
                }));

    deliver(NOON);

    assertEquals(List.of(), smtp.received());
  }

  @Test
  void while_the_mail_server_is_down_for_a_day_letters_wait_and_then_leave_once_each() {
    smtp.stop();
    enter("first");
    enter("second");

    List<Integer> tries = new ArrayList<>();
    for (int minutes = 0; minutes <= 24 * 60; minutes += 10) {
      deliver(NOON.plus(Duration.ofMinutes(minutes)));
      tries.add(row("first").tries);
    }
    int most = row("first").tries;
    assertTrue(most >= 8 && most <= 13, "tries in a day: " + tries);
    Sending.get("/api/letters").then().statusCode(200).body("", hasSize(2));
    Browsing.page("/letters").says("Two letters wait to be sent.", "the mail server was not there");

    smtp.start();
    for (int hours = 24; hours <= 40; hours++) {
      deliver(NOON.plus(Duration.ofHours(hours)));
    }

    assertEquals(2, smtp.received().size());
    Browsing.page("/letters").says("Nothing waits: every letter has left.");
  }

  @Test
  void an_address_that_is_refused_is_told_and_not_tried_again_until_somebody_says_so() {
    smtp.refuse(HOME);
    enter("bounces");

    deliver(NOON);
    deliver(NOON.plus(Duration.ofDays(1)));

    LetterRow row = row("bounces");
    assertEquals("refused", row.state);
    assertEquals(1, row.tries);
    assertFalse(row.answer.contains(HOME), row.answer);
    Browsing.page("/letters")
        .says(
            "One letter could not be delivered.",
            "The mail server does not take letters for this address, so it is not tried again.",
            "5.1.1");

    smtp.accept(HOME);
    Browsing.press("/letters/%s/try".formatted(row.id)).leadsTo("/letters?done=again");
    deliver(NOON.plus(Duration.ofDays(1)));

    assertEquals(1, smtp.received().size());
    Sending.post("/api/letters/%s/try".formatted(row.id), "{}").then().statusCode(404);
  }

  @Test
  void a_mail_server_that_asks_for_patience_is_given_it() {
    smtp.beBusy(true);
    enter("later");
    deliver(NOON);
    assertEquals("waiting", row("later").state);

    smtp.beBusy(false);
    deliver(NOON);
    assertEquals(0, smtp.received().size());
    deliver(NOON.plus(Duration.ofMinutes(1)));

    assertEquals(1, smtp.received().size());
  }

  @Test
  void after_five_days_a_letter_is_given_up_and_said_so() {
    smtp.stop();
    enter("vain");

    for (int hours = 0; hours <= 130; hours += 4) {
      deliver(NOON.plus(Duration.ofHours(hours)));
    }

    assertEquals("given-up", row("vain").state);
    Browsing.page("/letters").says("It was tried for five days in vain.");
    Browsing.press("/letters/%s/removal".formatted(row("vain").id))
        .leadsTo("/letters?done=dropped");
    Browsing.page("/letters").says("Nothing waits: every letter has left.");
  }

  @Test
  void whoever_has_no_address_any_more_is_not_written_to() {
    UUID nell = letting.user("nell", Role.READER);
    scenario.within(
        scenario.ours(),
        () ->
            outbox.enter(
                Letter.plain(nell, LetterKind.WISH, "nell", Locale.ENGLISH, "Hello", "Words")));

    deliver(NOON);

    assertEquals(List.of(), smtp.received());
    Browsing.page("/letters").says("No mail address is kept for them, so it was not sent.");
  }

  /** As when the machine loses power between the mail server's yes and our note of it. */
  @Test
  void a_letter_whose_sending_was_not_noted_comes_again_under_the_same_message_id() {
    enter("crash");
    deliver(NOON);
    scenario.within(
        scenario.ours(),
        () -> {
          LetterRow row = rows.find("once", "crash").firstResult();
          row.state = "waiting";
          row.endedAt = null;
          row.subject = "Something about crash";
          row.plain = "Plain words about crash";
        });

    deliver(NOON.plus(Duration.ofMinutes(1)));

    List<MailServerOfTests.Received> mails = smtp.received();
    assertEquals(2, mails.size());
    assertEquals(mails.get(0).header("Message-ID"), mails.get(1).header("Message-ID"));
  }

  @Test
  void several_copies_of_the_server_send_each_letter_once() throws Exception {
    int letters = 12;
    for (int i = 0; i < letters; i++) {
      enter("number " + i);
    }
    int copies = 4;
    CountDownLatch begin = new CountDownLatch(1);
    ExecutorService threads = Executors.newFixedThreadPool(copies);
    List<Future<?>> running = new ArrayList<>();
    for (int i = 0; i < copies; i++) {
      running.add(
          threads.submit(
              () -> {
                begin.await();
                deliver(NOON);
                return null;
              }));
    }
    begin.countDown();
    for (Future<?> one : running) {
      one.get(60, TimeUnit.SECONDS);
    }
    threads.shutdown();

    assertEquals(letters, smtp.received().size());
    assertEquals(
        letters, smtp.received().stream().map(m -> m.header("Message-ID")).distinct().count());
  }

  @Test
  void a_link_to_a_new_password_lies_nowhere_until_it_leaves_and_is_good_then() {
    smtp.stop();
    enterPassword("asked");
    enterPassword("asked again");
    deliver(NOON);
    deliver(NOON.plus(Duration.ofHours(2)));
    LetterRow waiting = row("asked again");
    assertEquals("waiting", waiting.state);
    assertEquals("Open " + Letter.LINK, waiting.plain);

    smtp.start();
    deliver(NOON.plus(Duration.ofHours(8)));

    String words = smtp.received().get(0).words();
    assertEquals(1, smtp.received().size());
    Matcher link = Pattern.compile("https://vestments.example(/welcome/\\S+)").matcher(words);
    assertTrue(link.find(), words);
    LettingIn.browser().get(link.group(1)).then().statusCode(200);
    assertEquals("", row("asked again").plain);
  }

  @Test
  void a_letter_that_is_of_use_for_a_day_is_dropped_after_it() {
    smtp.stop();
    enterPassword("too late");
    deliver(NOON);
    smtp.start();

    deliver(NOON.plus(Duration.ofDays(1)));

    assertEquals(List.of(), smtp.received());
    Browsing.page("/letters").says("Nothing waits: every letter has left.");
  }

  private void enterPassword(String once) {
    scenario.within(
        scenario.ours(),
        () ->
            outbox.enterAlone(
                new Letter(
                    piers,
                    LetterKind.PASSWORD,
                    once,
                    "en",
                    "A new password",
                    "Open " + Letter.LINK,
                    "",
                    StopLink.NONE,
                    Duration.ofDays(1))));
  }

  @Test
  void only_administrators_see_them() {
    String token = letting.token(piers);

    LettingIn.program(token).get("/api/letters").then().statusCode(403);
    LettingIn.program(token).accept("text/html").get("/letters").then().statusCode(403);
  }

  @Test
  void letters_to_somebody_who_is_removed_for_good_go_with_them() {
    enter("gone");
    Sending.post("/api/users/%s/erasure".formatted(piers), java.util.Map.of())
        .then()
        .statusCode(204);

    Sending.get("/api/letters").then().statusCode(200).body("size()", equalTo(0));
  }

  private void enter(String once) {
    scenario.within(scenario.ours(), () -> outbox.enter(letter(once)));
  }

  private Letter letter(String once) {
    return new Letter(
        piers,
        LetterKind.WEEK,
        once,
        "en",
        "Something about " + once,
        "Plain words about " + once,
        "<p>Words about %s</p>".formatted(once),
        new StopLink("https://vestments.example/letters/stop/x", ""),
        Duration.ZERO);
  }

  /** As the job does at that moment. */
  private void deliver(Instant moment) {
    Postman then = new Postman(rows, server, addresses, doors, Clock.fixed(moment, ZoneOffset.UTC));
    scenario.within(scenario.ours(), then::deliver);
  }

  private MailServerOfTests.Received only() {
    assertEquals(1, smtp.received().size());
    return smtp.received().get(0);
  }

  private LetterRow row(String once) {
    LetterRow[] found = new LetterRow[1];
    scenario.within(scenario.ours(), () -> found[0] = rows.find("once", once).firstResult());
    return found[0];
  }
}
