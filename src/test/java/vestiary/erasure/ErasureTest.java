package vestiary.erasure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.people.SavePerson;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Whoever is removed for good is in no row of the database any more; what was celebrated stays. */
@QuarkusTest
class ErasureTest {

  private static final String PERSON = "/people/cosmas-ilverton/erasure";
  private static final Map<String, List<String>> SURE = Map.of("sure", List.of("true"));

  private static final String TABLES =
      """
      select table_name from information_schema.tables
      where table_schema = 'public' and table_type = 'BASE TABLE' order by 1
      """;

  @Inject Scenario scenario;
  @Inject OwnerDatabase owner;
  @Inject LettingIn letting;
  @Inject SavePerson people;

  private String past;
  private String ahead;
  private String token;

  @BeforeEach
  void a_priest_is_named_wherever_a_name_can_stand() {
    scenario.load();
    past = mass("2026-11-22T10:00");
    ahead = mass("2026-12-09T20:00");
    Sending.put("/api/people/cosmas-ilverton/mail", Map.of("address", "cosmas@home.example"))
        .then()
        .statusCode(204);
    Map<String, Object> piece = Sending.get("/api/pieces/HT-W1-C").jsonPath().getMap("");
    Sending.put("/api/pieces/HT-W1-C", Sending.with(piece, "owner", "Father Cosmas Ilverton"))
        .then()
        .statusCode(200);
    Planning.applied("2026-12-07", "2026-12-13");
    Object journey = Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id");
    Sending.post(
            "/api/movements/%s/ask".formatted(journey),
            Map.of("carrier", "Fr Ilverton", "by", "Cosmas Ilverton"))
        .then()
        .statusCode(200);
    UUID user = letting.named("cosmas", "Fr Cosmas Ilverton", Role.PASTOR);
    token = letting.token(user);
    Map<String, Object> named = Sending.get("/api/masses/" + ahead).jsonPath().getMap("");
    LettingIn.program(token)
        .body(Sending.with(named, "note", "Fr. Ilverton likes the Gothic one; ask Ilverton"))
        .put("/api/masses/" + ahead)
        .then()
        .statusCode(200);
  }

  @Test
  void no_table_of_the_database_knows_the_name_any_more() throws SQLException {
    assertTrue(holding("ilverton").size() > 5, "found only in " + holding("ilverton"));

    Browsing.send(PERSON, SURE).leadsTo("/people?done=removed");

    assertEquals(List.of(), holding("ilverton"));
    assertEquals(List.of(), holding("cosmas@home"));
    Browsing.page("/people?done=removed").says("Removed for good.").keepsSilentOn("Ilverton");
    Browsing.page("/history").keepsSilentOn("Ilverton");
    Browsing.page("/history/masses/" + ahead).says("A person who was removed: Mass at Saint Anne");
    Browsing.open(PERSON).is(404);
  }

  @Test
  void masses_of_the_past_keep_their_counts_and_those_to_come_want_a_celebrant() {
    Sending.post("/api" + PERSON, Map.of()).then().statusCode(204);

    Map<String, Object> kept = Sending.get("/api/masses/" + past).jsonPath().getMap("");
    assertEquals(2, kept.get("concelebrants"));
    Browsing.page("/masses/" + past).says("a person who was removed");
    assertEquals(List.of("no-celebrant"), lost());
    Browsing.page("/day/2026-12-09")
        .says("Its celebrant was removed, and nobody is named in his place");

    Map<String, Object> orphan = Sending.get("/api/masses/" + ahead).jsonPath().getMap("");
    Sending.put("/api/masses/" + ahead, Sending.with(orphan, "celebrant", "Tarnwick"))
        .then()
        .statusCode(200);
    assertEquals(List.of(), lost());
  }

  @Test
  void an_account_of_that_name_is_closed_at_once() {
    LettingIn.program(token).get("/api/masses/" + ahead).then().statusCode(200);

    Browsing.send(PERSON, SURE).leadsTo("/people?done=removed");

    LettingIn.program(token).get("/api/masses/" + ahead).then().statusCode(401);
  }

  @Test
  void an_account_that_is_said_to_be_theirs_is_closed_whatever_it_is_called() throws SQLException {
    UUID other = letting.named("bursar", "Hilda Quarrington", Role.READER);
    String theirs = letting.token(other);
    Browsing.send(
            "/users/" + other,
            Map.of(
                "login", List.of("bursar"),
                "name", List.of("Hilda Quarrington"),
                "role", List.of("reader"),
                "person", List.of("cosmas-ilverton")))
        .leadsTo("/users/%s?done=saved".formatted(other));

    Browsing.send(PERSON, SURE).leadsTo("/people?done=removed");

    LettingIn.program(theirs).get("/api/masses/" + ahead).then().statusCode(401);
    assertEquals(List.of(), holding("quarrington"));
  }

  @Test
  void what_goes_and_what_stays_is_said_first_and_nothing_goes_without_a_tick() {
    String before = scenario.rows();

    Browsing.page(PERSON)
        .isHeaded("Remove Father Cosmas Ilverton for good?")
        .says(
            "The mail address.",
            "The account cosmas",
            "canon 535",
            "Masses of the past, with how many vested");
    Browsing.send(PERSON, Map.of()).is(400).says("Tick the box if you are sure");

    assertEquals(before, scenario.rows());
  }

  @Test
  void a_user_is_removed_alone_and_the_last_administrator_is_not() throws SQLException {
    UUID clerk = letting.named("wendeline", "Wendeline Hoarcross", Role.ADMINISTRATOR);
    LettingIn.program(letting.token(clerk))
        .body(Map.of("from", "ht", "to", "sa", "minutes", 44))
        .put("/api/journeys")
        .then()
        .statusCode(200);

    Browsing.send("/users/%s/erasure".formatted(clerk), SURE)
        .is(422)
        .says("Nobody else is administrator");
    assertFalse(holding("hoarcross").isEmpty());

    letting.user(Role.ADMINISTRATOR);
    Browsing.page("/users/%s/erasure".formatted(clerk)).says("The account wendeline");
    Browsing.send("/users/%s/erasure".formatted(clerk), SURE).leadsTo("/users");

    assertEquals(List.of(), holding("hoarcross"));
    assertEquals(List.of(), holding("wendeline"));
    Browsing.page("/history").says("A person who was removed: Journey between two churches");
  }

  @Test
  void somebody_else_of_that_surname_stays_as_they_are_called() throws SQLException {
    scenario.within(scenario.ours(), () -> people.carrying("Barnaby Ilverton"));
    Map<String, Object> named = Sending.get("/api/masses/" + ahead).jsonPath().getMap("");
    Sending.put("/api/masses/" + ahead, Sending.with(named, "note", "Ilverton brings the key"))
        .then()
        .statusCode(200);

    Browsing.send(PERSON, SURE).leadsTo("/people?done=removed");

    assertTrue(holding("barnaby ilverton").contains("person"));
    Browsing.page("/masses/" + ahead).says("Ilverton brings the key");
  }

  /** The kinds of clashes of the Mass to come. */
  private static List<Object> lost() {
    return Asking.clashes("2026-12-09", "2026-12-09").stream()
        .filter(c -> c.toString().contains("20:00"))
        .map(c -> c.get("kind"))
        .toList();
  }

  private static String mass(String start) {
    return Sending.mass(
            Map.of(
                "church",
                "sa",
                "start",
                start,
                "celebrant",
                "Ilverton",
                "concelebrants",
                2,
                "intention",
                "For the parents of Fr Cosmas Ilverton",
                "named",
                List.of("Tarnwick", "Ilverton")))
        .get("id")
        .toString();
  }

  /** The tables that have the words in any column of any row, whoever's. */
  private List<String> holding(String words) throws SQLException {
    List<String> holding = new ArrayList<>();
    try (Connection connection = owner.getConnection();
        Statement statement = connection.createStatement()) {
      for (String table : names(statement)) {
        String query = "select 1 from %s t where t::text ilike '%%%s%%' limit 1";
        try (ResultSet found = statement.executeQuery(query.formatted(table, words))) {
          if (found.next()) {
            holding.add(table);
          }
        }
      }
    }
    return holding;
  }

  private static List<String> names(Statement statement) throws SQLException {
    List<String> names = new ArrayList<>();
    try (ResultSet found = statement.executeQuery(TABLES)) {
      while (found.next()) {
        names.add(found.getString(1));
      }
    }
    return names;
  }
}
