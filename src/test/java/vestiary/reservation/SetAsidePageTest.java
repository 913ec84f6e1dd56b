package vestiary.reservation;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.is;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Browsing;
import vestiary.scenario.OwnerDatabase;
import vestiary.scenario.Page;
import vestiary.scenario.Planning;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** What a sacristan sees who sets vestments aside; Wednesday 9 December 2026 is a white weekday. */
@QuarkusTest
class SetAsidePageTest {

  private static final String TO_BE =
      "/reservations/new?church=ht&date=2027-06-12&time=11:00&liturgy=ordination&concelebrants=12"
          + "&massColour=white&bishop=true&minutes=120";

  @Inject Scenario scenario;
  @Inject OwnerDatabase database;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_page_says_of_each_set_why_it_is_free_or_why_not() {
    String mass = white("sa", "2026-12-09T15:00");
    String other = white("ht", "2026-12-09T15:00");
    Reserving.held("HT-W1", other);

    Browsing.page("/masses/" + mass).links("/reservations/new?mass=" + mass);
    Browsing.page("/reservations/new?mass=" + mass)
        .isHeaded("Set vestments aside")
        .says(
            "Mass at Saint Anne on Wednesday 9 December, 15:00.",
            "from set-out at 14:40 to clearance at 15:45",
            "SA-W1 white chasuble and stole, solemn, 120 cm lies here",
            "HT-W2 white chasuble and stole, Trinity whites, solemn, 132 cm lies at Holy Trinity, 14 minutes away",
            "is held by the administrator for Mass at Holy Trinity, 15:00, until 15:45",
            "is in care to ",
            "does not leave Holy Trinity");
  }

  @Test
  void what_the_hold_takes_from_others_is_shown_before_it_is_confirmed() throws SQLException {
    String[] worn = planned();
    String mass = Reserving.mass("sm", worn[1]);

    Page confirm = Browsing.page("/reservations/check?mass=%s&set=%s".formatted(mass, worn[0]));

    confirm.says("What plans lose", worn[0] + " is planned for ", "which loses the set.");
    assertEquals(List.of("0"), Reserving.ask(database, "select count(*)::text from reservation"));
    Browsing.send("/reservations", confirm.form("/reservations")).wayOn();
    assertEquals(
        List.of("2"),
        Reserving.ask(
            database,
            "select count(*)::text from occupation where state = 'planned' and not standing"));
  }

  @Test
  void a_shortage_that_would_arise_is_shown_before_it_is_confirmed() {
    String far = white("sm", "2026-12-09T15:00");
    String here = white("sj", "2026-12-09T15:00");
    StringBuilder all = new StringBuilder("/reservations/check?mass=" + far);
    for (String set :
        List.of(
            "HT-W1", "HT-W2", "HT-W3", "SA-W1", "SA-W2", "SJ-W1", "OL-W1", "OL-W2", "PP-W1",
            "SM-W1")) {
      all.append("&set=").append(set);
    }

    Page one = Browsing.page("/reservations/check?mass=%s&set=SM-W1".formatted(far));
    Page every = Browsing.page(all.toString());

    one.says("Nobody else loses anything by it.");
    every.says("What then falls short");
    assertTrue(!here.isEmpty());
  }

  @Test
  void whoever_holds_is_told_what_was_done_and_can_give_it_up_and_take_that_back() {
    String mass = white("sa", "2026-12-09T15:00");

    Page done =
        Browsing.page(
            Browsing.send("/reservations", Map.of("mass", List.of(mass), "set", List.of("HT-W1")))
                .wayOn());
    done.isHeaded("7 to 13 December 2026")
        .says(
            "HT-W1 is set aside for Mass at Saint Anne on Wednesday 9 December, 15:00.",
            "Held by the administrator for Mass at Saint Anne on Wednesday 9 December, 15:00, until 15:45.",
            "It belongs at Holy Trinity, and somebody must bring it by 14:40.");

    Page released =
        Browsing.page(Browsing.press(done.action("/reservations/[^/]+/release")).wayOn());
    released.says(
        "HT-W1 is given up; others may have it now.", "Nothing is set aside in this week.");

    Browsing.page(Browsing.press(released.action("/reservations/[^/]+/restoration")).wayOn())
        .says("HT-W1 is set aside for Mass at Saint Anne");
    Browsing.page("/reservations?week=2026-12-09&church=ht").keepsSilentOn("HT-W1");
    Browsing.page("/week/2026-12-07").links("/reservations?week=2026-12-07");
  }

  @Test
  void whoever_loses_the_race_reads_who_has_it_and_keeps_the_page() {
    String mass = white("sa", "2026-12-09T15:00");
    Reserving.held("HT-W1", white("ht", "2026-12-09T15:00"));

    Browsing.send("/reservations", Map.of("mass", List.of(mass), "set", List.of("SA-W1", "HT-W1")))
        .is(409)
        .isHeaded("Set vestments aside")
        .says("HT-W1 is held by the administrator for Mass at Holy Trinity, 15:00, until 15:45.");
    Sending.get("/api/reservations?mass=" + mass).then().body("size()", is(0));
  }

  @Test
  void a_mass_to_come_is_entered_together_with_what_is_set_aside_for_it() {
    allMassesAreThere();
    Page free = refusing.unchanged(() -> Browsing.page(TO_BE));
    free.says("Mass at Holy Trinity on Saturday 12 June, 11:00.", "from set-out at 10:00");

    Page confirm =
        refusing.unchanged(
            () -> Browsing.page(TO_BE.replace("/new?", "/check?") + "&set=HT-W1&set=HT-W2"));
    confirm.says("The Mass is entered in the schedule with them.");

    Page done =
        Browsing.page(Browsing.send("/reservations", confirm.form("/reservations")).wayOn());
    done.says("HT-W1 and HT-W2 are set aside for Mass at Holy Trinity on Saturday 12 June, 11:00.");
    Sending.get("/api/masses?from=2027-06-12&to=2027-06-12&church=ht")
        .then()
        .body("findAll { it.mass == 'ordination' }.concelebrants", contains(12));
    Sending.get("/api/reservations?from=2027-06-12&to=2027-06-12")
        .then()
        .body("set", contains("HT-W1", "HT-W2"));
  }

  @Test
  void a_mass_that_cannot_be_entered_enters_nothing_and_holds_nothing() {
    allMassesAreThere();
    refusing.unchanged(() -> Browsing.open(TO_BE.replace("11:00", "25:00")).is(400));
    refusing.unchanged(
        () ->
            Browsing.send(
                    "/reservations",
                    Map.of(
                        "church", List.of("ht"),
                        "date", List.of("2027-06-12"),
                        "time", List.of("11:00"),
                        "set", List.of("HT-W4", "HT-W99")))
                .is(404));
    Reserving.held("HT-W1", white("sa", "2027-06-12T11:00"));
    refusing.unchanged(
        () ->
            Browsing.send(
                    "/reservations",
                    Map.of(
                        "church", List.of("ht"),
                        "date", List.of("2027-06-12"),
                        "time", List.of("11:00"),
                        "set", List.of("HT-W1")))
                .is(409));
  }

  @Test
  void a_number_is_answered_by_those_that_lie_nearest_and_match() {
    String mass = white("ht", "2026-12-09T15:00");

    Page three = Browsing.page("/reservations/new?mass=%s&number=3".formatted(mass));
    three.says("Three white chasubles are ticked below", "All of them lie here.");
    assertEquals(
        List.of("HT-W1", "HT-W2", "HT-W3"),
        three.form("/reservations/check").get("set").stream().sorted().toList());

    Page matching =
        Browsing.page(
            "/reservations/new?mass=%s&number=3&matching=true"
                .formatted(white("sa", "2026-12-10T15:00")));
    matching.says("They come in one journey.");
    assertEquals(
        List.of("HT-W1", "HT-W2", "HT-W3"),
        matching.form("/reservations/check").get("set").stream().sorted().toList());

    Browsing.page("/reservations/new?mass=%s&number=40".formatted(mass)).says("too few.");
    Browsing.page("/reservations/new?mass=%s&number=none".formatted(mass))
        .says("number \"none\" is no whole number.");
  }

  private String[] planned() throws SQLException {
    Planning.applied("2026-12-07", "2026-12-13");
    return Reserving.ask(
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
  }

  /** Patterns yield their Masses when somebody first looks so far ahead. */
  private static void allMassesAreThere() {
    Sending.get("/api/masses?from=2027-06-12&to=2027-06-13").then().statusCode(200);
  }

  private static String white(String church, String start) {
    return Sending.mass(Map.of("church", church, "start", start, "colour", "white"))
        .get("id")
        .toString();
  }
}
