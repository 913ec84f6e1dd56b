package vestiary.reservation;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.mailer.Mail;
import io.quarkus.mailer.MockMailbox;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.EveryCluster;
import vestiary.access.Role;
import vestiary.mail.Postman;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.scenario.WithMail;
import vestiary.users.LettingIn;

/**
 * A sacristan of Saint Anne asks for what Holy Trinity holds; both can be written to, at a server
 * that mails.
 */
@QuarkusTest
@TestProfile(WithMail.class)
class WishTest {

  private static final String ADDRESS = "/reservations/wishes";

  @Inject Scenario scenario;
  @Inject LettingIn letting;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;
  @Inject MockMailbox mailbox;
  @Inject Postman postman;
  @Inject TellWaiting waiting;
  @Inject EveryCluster clusters;

  private String anne;
  private String trinity;
  private String atAnne;
  private String atTrinity;

  @BeforeEach
  void two_sacristans_and_two_masses_at_one_hour() {
    scenario.load();
    UUID ofAnne = letting.named("anne", "Greta Holm", Role.SACRISTAN, "sa");
    UUID ofTrinity = letting.named("trinity", "Ansel Brook", Role.SACRISTAN, "ht");
    letting.writtenTo(ofAnne, "greta@home.example");
    letting.writtenTo(ofTrinity, "ansel@home.example");
    anne = letting.token(ofAnne);
    trinity = letting.token(ofTrinity);
    atAnne = Reserving.mass("sa", "2026-12-09T15:00");
    atTrinity = Reserving.mass("ht", "2026-12-09T15:00");
    // The first use of a token is noted.
    List.of(anne, trinity).forEach(one -> LettingIn.program(one).get("/api/churches"));
    mailbox.clear();
  }

  @Test
  void each_sets_aside_for_masses_of_their_own_church_alone() {
    refusing.refused(403, "not-allowed", () -> sets(anne, "HT-W1", atTrinity));
    sets(trinity, "HT-W1", atTrinity).then().statusCode(201);
    String id = sets(anne, "SA-W1", atAnne).then().statusCode(201).extract().path("id");
    refusing.refused(
        403, "not-allowed", () -> LettingIn.program(trinity).delete("/api/reservations/" + id));
    String reader = letting.token(letting.user(Role.READER));
    LettingIn.program(reader).get("/api/churches");
    refusing.refused(403, "not-allowed", () -> sets(reader, "HT-W2", atTrinity));
    LettingIn.program(reader)
        .get("/api/reservations?from=2026-12-09&to=2026-12-09")
        .then()
        .body("by", contains("Ansel Brook", "Greta Holm"));
  }

  @Test
  void a_yes_takes_it_from_the_one_and_sets_it_aside_for_the_other() throws SQLException {
    sets(trinity, "HT-W1", atTrinity).then().statusCode(201);
    asks(anne, "HT-W1", "For the bishop").then().statusCode(303);

    assertEquals(List.of("HT-W1 is asked for"), subjects("ansel@home.example"));
    String wish = Wishing.last();
    Browsing.page(ADDRESS)
        .says("Greta Holm asks for HT-W1 for Mass at Saint Anne on Wednesday 9 December, 15:00.")
        .says("“For the bishop”");
    form(anne).post("%s/%s/yes".formatted(ADDRESS, wish)).then().statusCode(403);

    form(trinity)
        .formParam("answer", "Bring it back clean")
        .post("%s/%s/yes".formatted(ADDRESS, wish))
        .then()
        .statusCode(303);

    Sending.get("/api/reservations?mass=" + atTrinity).then().body("", empty());
    Sending.get("/api/reservations?mass=" + atAnne)
        .then()
        .body("set", contains("HT-W1"))
        .body("by", contains("Greta Holm"));
    deliver();
    Mail mail = mailbox.getMailsSentTo("greta@home.example").get(0);
    assertTrue(mail.getText().contains("Yes: HT-W1 is set aside"), mail.getText());
    assertTrue(mail.getText().contains("“Bring it back clean”"), mail.getText());
    assertTrue(mail.getText().contains("https://vestments.example" + ADDRESS), mail.getText());
    refusing.unchanged(
        () -> form(trinity).post("%s/%s/no".formatted(ADDRESS, wish)).then().statusCode(409));
  }

  @Test
  void a_program_asks_answers_and_takes_back() throws SQLException {
    sets(trinity, "HT-W1", atTrinity).then().statusCode(201);
    Map<String, String> one = Map.of("set", "HT-W1", "mass", atAnne, "note", "For the bishop");
    String wish = posts(anne, "", one).then().statusCode(201).extract().path("id");
    LettingIn.program(trinity)
        .get("/api/wishes")
        .then()
        .body("set", contains("HT-W1"))
        .body("keeper", contains("ht"))
        .body("by", contains("Greta Holm"))
        .body("state", contains("open"));
    refusing.refused(
        403, "not-allowed", () -> posts(anne, "/" + wish + "/yes", Map.of("answer", "Mine")));

    posts(trinity, "/" + wish + "/no", Map.of("answer", "We need it"))
        .then()
        .statusCode(200)
        .body("state", equalTo("refused"))
        .body("answer", equalTo("We need it"))
        .body("answeredBy", equalTo("Ansel Brook"));
    refusing.refused(409, "taken", () -> posts(trinity, "/" + wish + "/yes", Map.of()));
    LettingIn.program(anne).delete("/api/wishes/" + wish).then().statusCode(204);
    refusing.refused(409, "taken", () -> LettingIn.program(anne).delete("/api/wishes/" + wish));
    refusing.refused(
        400,
        "unfit-field",
        () -> posts(anne, "", Map.of("mass", atAnne, "set", "HT-W1", "piece", "x")));
    refusing.refused(404, "not-there", () -> LettingIn.program(anne).get("/api/wishes/" + anne));
  }

  private static Response posts(String token, String way, Map<String, String> body) {
    return LettingIn.program(token)
        .contentType("application/json")
        .body(body)
        .post("/api/wishes" + way);
  }

  @Test
  void the_owner_s_yes_is_noted_where_all_such_leaves_are_and_holds() throws SQLException {
    String wish = asked(anne, "HT-B1");

    form(trinity).post("%s/%s/yes".formatted(ADDRESS, wish)).then().statusCode(303);

    Sending.get("/api/reservations?mass=" + atAnne).then().body("set", contains("HT-B1"));
    assertEquals(
        List.of("granted", "granted"),
        Reserving.ask(database, "select state from consent order by 1"));
  }

  @Test
  void a_leave_that_was_given_before_is_kept_to() {
    String wish = asked(anne, "HT-B1");
    form(trinity).post("%s/%s/yes".formatted(ADDRESS, wish)).then().statusCode(303);
    String id = Sending.get("/api/reservations?mass=" + atAnne).path("[0].id");
    Sending.delete("/api/reservations/" + id).then().statusCode(204);

    sets(anne, "HT-B1", atAnne).then().statusCode(201);
  }

  @Test
  void an_owner_s_no_holds_nothing_and_stands() {
    String wish = asked(anne, "HT-B1");

    form(trinity).post("%s/%s/no".formatted(ADDRESS, wish)).then().statusCode(303);

    refusing
        .refused(409, "taken", () -> sets(anne, "HT-B1", atAnne))
        .body("detail", containsString("Holy Trinity said no for this Mass"));
    assertEquals(List.of("The answer about HT-B1"), subjects("greta@home.example"));
  }

  @Test
  void the_first_who_asked_is_told_first_and_nobody_twice() {
    String held = sets(trinity, "HT-W1", atTrinity).then().statusCode(201).extract().path("id");
    String atJoseph = Reserving.mass("sj", "2026-12-09T15:00");
    UUID ofJoseph = letting.named("joseph", "Piers Vale", Role.SACRISTAN, "sj");
    letting.writtenTo(ofJoseph, "piers@home.example");
    asked(anne, "HT-W1");
    form(letting.token(ofJoseph))
        .formParam("mass", atJoseph)
        .formParam("set", "HT-W1")
        .post(ADDRESS)
        .then()
        .statusCode(303);
    deliver();
    mailbox.clear();
    scenario.asJob(() -> clusters.each(waiting::look));
    deliver();
    assertEquals(0, mailbox.getTotalMessagesSent());

    LettingIn.program(trinity).delete("/api/reservations/" + held).then().statusCode(204);
    scenario.asJob(() -> clusters.each(waiting::look));

    assertEquals(List.of("HT-W1 is free now"), subjects("greta@home.example"));
    assertEquals(List.of(), subjects("piers@home.example"));
    Browsing.page(ADDRESS).says("HT-W1 is free now for Mass at Saint Anne");

    String again = sets(anne, "HT-W1", atAnne).then().statusCode(201).extract().path("id");
    LettingIn.program(anne).delete("/api/reservations/" + again).then().statusCode(204);

    assertEquals(List.of("HT-W1 is free now"), subjects("greta@home.example"));
    assertEquals(List.of("HT-W1 is free now"), subjects("piers@home.example"));
  }

  @Test
  void what_comes_out_of_care_is_told_within_a_few_minutes() {
    asked(anne, "SA-W3");
    scenario.asJob(() -> clusters.each(waiting::look));
    assertEquals(List.of(), subjects("greta@home.example"));
    for (String piece : List.of("SA-W3-C", "SA-W3-S")) {
      Sending.get("/api/pieces/" + piece)
          .jsonPath()
          .getList("care.id", String.class)
          .forEach(
              care ->
                  Sending.delete("/api/pieces/%s/care/%s".formatted(piece, care))
                      .then()
                      .statusCode(204));
    }

    scenario.asJob(() -> clusters.each(waiting::look));
    scenario.asJob(() -> clusters.each(waiting::look));

    assertEquals(List.of("SA-W3 is free now"), subjects("greta@home.example"));
  }

  @Test
  void what_is_free_or_never_to_be_had_is_not_asked_for() {
    for (String set : List.of("HT-W1", "HT-W4")) {
      refusing.unchanged(() -> asks(anne, set, "").then().statusCode(409));
    }
    String wish = asked(anne, "HT-B1");
    refusing.unchanged(() -> asks(anne, "HT-B1", "").then().statusCode(409));

    form(anne).post("%s/%s/withdrawal".formatted(ADDRESS, wish)).then().statusCode(303);
    Browsing.page(ADDRESS).says("Nobody waits for an answer.");
    asks(anne, "HT-B1", "").then().statusCode(303);
  }

  private String asked(String token, String set) {
    asks(token, set, "").then().statusCode(303);
    return Wishing.last();
  }

  private Response asks(String token, String set, String note) {
    return form(token).formParams(Map.of("mass", atAnne, "set", set, "note", note)).post(ADDRESS);
  }

  private static RequestSpecification form(String token) {
    return LettingIn.program(token)
        .contentType("application/x-www-form-urlencoded; charset=UTF-8")
        .accept("text/html");
  }

  private static Response sets(String token, String set, String mass) {
    return LettingIn.program(token)
        .body(Map.of("set", set, "mass", mass))
        .post("/api/reservations");
  }

  private void deliver() {
    scenario.within(scenario.ours(), postman::deliver);
  }

  private List<String> subjects(String address) {
    deliver();
    return mailbox.getMailsSentTo(address).stream().map(Mail::getSubject).toList();
  }
}
