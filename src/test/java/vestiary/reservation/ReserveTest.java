package vestiary.reservation;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/**
 * Sets and pieces set aside for a Mass, in the invented cluster; Wednesday 9 December 2026 is a
 * weekday, on which vestments are set out twenty minutes before.
 */
@QuarkusTest
class ReserveTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject OwnerDatabase database;

  private String atAnne;

  @BeforeEach
  void a_mass_at_saint_anne() {
    scenario.load();
    atAnne = Reserving.mass("sa", "2026-12-09T15:00");
  }

  @Test
  void a_set_is_held_with_all_its_pieces_from_set_out_to_clearance() throws SQLException {
    Reserving.set("HT-W1", atAnne)
        .then()
        .statusCode(201)
        .body("set", equalTo("HT-W1"))
        .body("pieces", contains("HT-W1-C", "HT-W1-S"))
        .body("church", equalTo("sa"))
        .body("mass", equalTo(atAnne))
        .body("from", equalTo("2026-12-09T14:40:00-06:00"))
        .body("to", equalTo("2026-12-09T15:45:00-06:00"))
        .body("state", equalTo("held"))
        .body("by", equalTo("the administrator"));

    assertEquals(List.of("HT-W1-C held t", "HT-W1-S held t"), rows());
  }

  @Test
  void of_a_set_that_lacks_one_piece_none_is_held() throws SQLException {
    Reserving.piece("HT-W1-S", Reserving.mass("ht", "2026-12-09T15:00")).then().statusCode(201);

    refusing
        .refused(409, "taken", () -> Reserving.set("HT-W1", atAnne))
        .body("detail", containsString("HT-W1-S of it is held by the administrator"));

    assertEquals(List.of("HT-W1-S held t"), rows());
  }

  @Test
  void whoever_comes_second_is_told_who_has_it_for_what_until_when_and_what_is_nearest() {
    String first = Reserving.mass("ht", "2026-12-09T15:00");
    Reserving.held("HT-W1", first);

    refusing
        .refused(409, "taken", () -> Reserving.set("HT-W1", atAnne))
        .body(
            "detail",
            startsWith(
                "HT-W1 is held by the administrator for Mass at Holy Trinity, 15:00, until 15:45."
                    + " Nothing was set aside. Free instead: SA-W1 (lies here)"))
        .body("by", equalTo("the administrator"))
        .body("mass", equalTo(first))
        .body("until", equalTo("2026-12-09T15:45:00-06:00"))
        .body("alternatives", contains("SA-W1", "SA-W2", "HT-W2"));
  }

  @Test
  void a_set_comes_in_time_or_not_at_all() {
    // Cleared at Holy Trinity at 14:27, fourteen minutes away; set out at Saint Anne from 14:40.
    String before =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-09T13:42", "minutes", 30))
            .get("id")
            .toString();
    Reserving.held("HT-W1", before);

    refusing
        .refused(409, "taken", () -> Reserving.set("HT-W1", atAnne))
        .body(
            "detail",
            containsString("comes too late: it is at Holy Trinity until 14:27, 14 minutes away"));

    String earlier =
        Sending.mass(Map.of("church", "ht", "start", "2026-12-09T13:41", "minutes", 30))
            .get("id")
            .toString();
    Reserving.held("HT-W2", earlier);
    Reserving.set("HT-W2", atAnne).then().statusCode(201);
  }

  @Test
  void a_set_goes_on_in_time_to_where_it_is_held_next() {
    // Cleared at Saint Anne at 15:45; set out at Holy Trinity from 15:58, fourteen minutes away.
    Reserving.held("HT-W1", Reserving.mass("ht", "2026-12-09T16:18"));
    Reserving.held("HT-W2", Reserving.mass("ht", "2026-12-09T16:19"));

    refusing
        .refused(409, "taken", () -> Reserving.set("HT-W1", atAnne))
        .body("detail", containsString("is wanted at Holy Trinity by 15:58, 14 minutes away"));
    Reserving.set("HT-W2", atAnne).then().statusCode(201);
  }

  @Test
  void in_one_church_a_set_stays_out_for_the_next_mass_and_both_have_their_part_of_the_time()
      throws SQLException {
    String next = Reserving.mass("sa", "2026-12-09T15:40");
    Reserving.held("SA-W1", atAnne);

    Reserving.set("SA-W1", next)
        .then()
        .statusCode(201)
        .body("from", equalTo("2026-12-09T15:35:00-06:00"));

    assertEquals(
        List.of("14:40 15:35", "14:40 15:35", "15:35 16:25", "15:35 16:25"),
        Reserving.ask(
            database,
            """
            select to_char(starts at time zone 'America/Chicago', 'HH24:MI ')
                || to_char(ends at time zone 'America/Chicago', 'HH24:MI')
            from occupation where state = 'held' order by 1
            """));
    String tooSoon = Reserving.mass("sa", "2026-12-09T15:34");
    refusing.refused(409, "taken", () -> Reserving.set("SA-W1", tooSoon));
  }

  @Test
  void what_stays_at_home_is_in_care_or_its_owners_own_is_not_to_be_had() {
    says("HT-W4", atAnne, "HT-W4 does not leave Holy Trinity.");
    says("SA-W3", atAnne, "SA-W3 is in care to ");
    says("HT-B1", atAnne, "HT-B1 goes only when Holy Trinity is asked.");
    Reserving.set("HT-W4", Reserving.mass("ht", "2026-12-09T18:00")).then().statusCode(201);
  }

  @Test
  void a_hold_goes_before_a_plan_and_the_next_plan_goes_round_it() throws SQLException {
    Planning.applied("2026-12-07", "2026-12-13");
    String[] worn =
        Reserving.ask(
                database,
                """
                select s.code || ' ' || to_char(m.starts at time zone 'UTC', 'YYYY-MM-DD"T"HH24:MI"Z"')
                from occupation o join piece p on p.id = o.piece_id
                  join vestment_set s on s.id = p.set_id join mass m on m.id = o.mass_id
                where o.state = 'planned' and o.standing and p.kind = 'chasuble' and not p.stays_home
                order by 1 limit 1
                """)
            .get(0)
            .split(" ");

    Reserving.held(worn[0], Reserving.mass("sm", worn[1]));

    assertEquals(List.of("2"), count("state = 'planned' and not standing"));
    assertEquals(List.of("0"), overlaps());

    Planning.applied("2026-12-07", "2026-12-13");

    assertEquals(List.of("2"), count("state = 'held' and standing"));
    assertEquals(List.of("0"), count("state = 'planned' and not standing"));
    assertEquals(List.of("0"), overlaps());
  }

  @Test
  void what_is_given_up_is_free_at_once_and_can_be_had_again() {
    String id = Reserving.held("HT-W1", atAnne);

    Sending.delete("/api/reservations/" + id).then().statusCode(204);

    Sending.get("/api/reservations/" + id).then().body("state", equalTo("released"));
    Sending.get("/api/reservations?from=2026-12-09&to=2026-12-09").then().body("", empty());
    refusing.refused(409, "taken", () -> Sending.delete("/api/reservations/" + id));
    Reserving.set("HT-W1", atAnne).then().statusCode(201);
  }

  @Test
  void the_list_is_that_of_the_dates_or_of_the_mass() {
    Reserving.held("HT-W1", atAnne);
    String other = Reserving.mass("ht", "2026-12-10T15:00");
    Reserving.held("HT-W2", other);

    Sending.get("/api/reservations?from=2026-12-09&to=2026-12-10")
        .then()
        .body("set", contains("HT-W1", "HT-W2"));
    Sending.get("/api/reservations?from=2026-12-10&to=2026-12-10")
        .then()
        .body("set", contains("HT-W2"));
    Sending.get("/api/reservations?mass=" + atAnne).then().body("set", contains("HT-W1"));
    Sending.get("/api/reservations?from=2026-12-09&to=2026-12-10&mass=" + other)
        .then()
        .body("set", contains("HT-W2"));
  }

  @Test
  void what_cannot_be_is_refused_in_words() {
    refusing.unfit(() -> Sending.post("/api/reservations", Map.of("mass", atAnne)), "set");
    refusing.unfit(
        () ->
            Sending.post(
                "/api/reservations", Map.of("mass", atAnne, "set", "HT-W1", "piece", "HT-W2-C")),
        "set");
    refusing.unfit(() -> Sending.post("/api/reservations", Map.of("set", "HT-W1")), "mass");
    refusing.notThere(() -> Reserving.set("HT-W99", atAnne));
    refusing.notThere(() -> Reserving.set("HT-W1", "00000000-0000-0000-0000-000000000000"));
    refusing.unfit(() -> Sending.get("/api/reservations?from=2026-12-10&to=2026-12-09"), "to");
    refusing.unfit(() -> Sending.get("/api/reservations?from=yesterday&to=2026-12-09"), "from");
    String over = Reserving.mass("ht", "2026-11-30T05:00");
    refusing
        .refused(422, "against-rule", () -> Reserving.set("HT-W1", over))
        .body("detail", containsString("was over on 30 November 2026 at 05:30"));
    Sending.delete("/api/masses/" + atAnne).then().statusCode(204);
    refusing.refused(422, "against-rule", () -> Reserving.set("HT-W1", atAnne));
  }

  @Test
  void damage_takes_a_piece_from_a_reservation_which_says_so() {
    String id = Reserving.held("HT-W1", atAnne);

    Sending.post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-01", "reason", "Torn"))
        .then()
        .statusCode(201);

    Sending.get("/api/reservations/" + id)
        .then()
        .body("pieces", contains("HT-W1-S"))
        .body("lost", contains("HT-W1-C"));
  }

  @Test
  void what_is_held_follows_its_mass_to_another_hour_and_church() throws SQLException {
    String held = Reserving.held("HT-W1", atAnne);

    move("ht", "2026-12-10T18:00");

    Sending.get("/api/reservations/" + held)
        .then()
        .body("state", equalTo("held"))
        .body("church", equalTo("ht"))
        .body("from", equalTo("2026-12-10T17:40:00-06:00"));
    assertEquals(List.of("HT-W1-C held t", "HT-W1-S held t"), rows());
  }

  @Test
  void what_cannot_be_had_at_the_new_hour_is_given_up_and_whoever_has_it_keeps_it()
      throws SQLException {
    String held = Reserving.held("HT-W1", atAnne);
    String other = Reserving.held("HT-W1", Reserving.mass("ht", "2026-12-10T18:00"));

    move("sa", "2026-12-10T18:00");

    Sending.get("/api/reservations/" + held).then().body("state", equalTo("released"));
    Sending.get("/api/reservations/" + other).then().body("state", equalTo("held"));
    assertEquals(List.of("HT-W1-C held t", "HT-W1-S held t"), rows());
  }

  @Test
  void what_is_held_for_a_mass_that_is_cancelled_is_given_up() throws SQLException {
    String held = Reserving.held("HT-W1", atAnne);

    Sending.delete("/api/masses/" + atAnne).then().statusCode(204);

    Sending.get("/api/reservations/" + held).then().body("state", equalTo("released"));
    assertEquals(List.of(), rows());
  }

  private void move(String church, String start) {
    Sending.put("/api/masses/" + atAnne, Map.of("church", church, "start", start))
        .then()
        .statusCode(200);
  }

  @Test
  void a_clash_knows_what_is_held() {
    String clashes = "/api/clashes?from=2026-12-09&to=2026-12-09";
    Sending.get(clashes).then().body("kind", not(hasItem("shortage")));
    String far = Reserving.mass("sm", "2026-12-09T15:00");
    for (String set : List.of("HT-V1", "HT-V2", "HT-V3", "HT-V4", "SA-V1", "SA-V2")) {
      Reserving.held(set, far);
    }

    Sending.get(clashes).then().body("kind", hasItem("shortage"));
  }

  private void says(String set, String mass, String sentence) {
    refusing
        .refused(409, "taken", () -> Reserving.set(set, mass))
        .body("detail", startsWith(sentence));
  }

  private List<String> rows() throws SQLException {
    return Reserving.ask(
        database,
        """
        select p.code || ' ' || o.state || ' ' || left(o.standing::text, 1)
        from occupation o join piece p on p.cluster_id = o.cluster_id and p.id = o.piece_id
        where o.state <> 'planned' and o.state <> 'care' and p.code <> 'OL-D1' order by 1
        """);
  }

  private List<String> count(String which) throws SQLException {
    return Reserving.ask(database, "select count(*)::text from occupation where " + which);
  }

  private List<String> overlaps() throws SQLException {
    return Reserving.ask(
        database,
        """
        select count(*)::text from occupation a join occupation b
          on a.piece_id = b.piece_id and a.id < b.id and a.standing and b.standing
          and a.starts < coalesce(b.ends, 'infinity') and b.starts < coalesce(a.ends, 'infinity')
        """);
  }
}
