package vestiary.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;

import biweekly.Biweekly;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.access.Role;
import vestiary.telling.Lettering;
import vestiary.users.LettingIn;

/**
 * The pastor has signed the week from 30 November 2026; then Father Ilverton falls ill. What that
 * did, who can stand in, who hears of it, and what calendars show.
 */
@QuarkusTest
@TestProfile(WithSmtp.class)
class PriestFallsIllTest {

  private static final String WEEK = "/review/2026-11-30";
  private static final String ILL = "/people/cosmas-ilverton/absences";
  private static final String COSMAS = "cosmas@home.example";
  private static final String FINTAN = "fintan@home.example";

  @Inject Scenario scenario;
  @Inject Lettering letters;
  @Inject LettingIn letting;

  @ConfigProperty(name = "quarkus.mailer.port")
  int port;

  private MailServerOfTests smtp;

  @BeforeEach
  void the_week_is_signed_and_both_priests_can_be_written_to() {
    scenario.load();
    writeTo("cosmas-ilverton", COSMAS);
    writeTo("fintan-oakhallow", FINTAN);
    letters.keepSilentOnChanges();
    smtp = new MailServerOfTests(port);
    smtp.start();
    Map<String, List<String>> form = new LinkedHashMap<>(page(WEEK).form(WEEK));
    form.put("note", List.of("All is well."));
    send(WEEK, form).leadsTo(WEEK);
  }

  @AfterEach
  void stop() {
    smtp.close();
  }

  @Test
  void the_signed_week_says_what_that_did_and_one_press_names_others_and_tells_them() {
    String feedOfFintan = feed("fintan", "fintan-oakhallow");
    String feedOfCosmas = feed("cosmas", "cosmas-ilverton");
    Map<String, Object> friday = Asking.mass("ol", "2026-12-04T09:00");
    assertEquals("cosmas-ilverton", friday.get("celebrant"));
    assertFalse(states(feedOfFintan).containsKey(friday.get("id").toString()));

    String entered = send(ILL + "/ill", Map.of("until", List.of("2026-12-06"))).wayOn();
    page(entered).says("not available from 30 November 2026, 06:00 to 6 December 2026");

    Page week =
        page(WEEK)
            .says(
                "All is well.",
                "New in the way: Our Lady of the Rosary, Friday 4 December, 09:00:",
                "In place of whoever is away",
                "and nobody else is moved",
                "Friday 4 December, 09:00, Our Lady of the Rosary: Father Fintan Oakhallow,"
                    + " in place of Father Cosmas Ilverton");

    String named = send("/celebrants/assignments", week.form("/celebrants/assignments")).wayOn();

    Page after =
        page(named)
            .says("a new celebrant", "Undo", "the celebrant is Oakhallow instead of Ilverton");
    assertEquals("fintan-oakhallow", celebrant(friday));

    letters.tellChanges();
    String written = to(FINTAN).words();
    assertTrue(written.contains("Our Lady of the Rosary"), written);
    assertTrue(written.contains("You are named here now."), written);
    assertTrue(to(COSMAS).words().contains("You are named here no more;"), to(COSMAS).words());
    String id = friday.get("id").toString();
    assertEquals("CONFIRMED", states(feedOfFintan).get(id));
    assertFalse(states(feedOfCosmas).containsKey(id));

    press(after.action("/celebrants/assignments/[^/]+/undo"));
    assertEquals("cosmas-ilverton", celebrant(friday));
  }

  @Test
  void what_nobody_can_take_is_shown_with_its_way_out_and_is_not_cancelled() {
    send(ILL + "/ill", Map.of("until", List.of("2026-12-06")));
    Map<String, Object> sunday = Asking.mass("pp", "2026-12-06T08:30");

    page(WEEK)
        .says(
            "Nobody can take these:",
            "Sunday 6 December, 08:30, Saints Peter and Paul: why, and the ways out")
        .links("/masses/%s/celebrant".formatted(sunday.get("id")));

    page("/masses/%s/celebrant".formatted(sunday.get("id"))).says("Ways out");
    assertEquals(
        List.of(),
        Asking.clashes("2026-12-06", "2026-12-06").stream()
            .filter(clash -> "double-booked".equals(clash.get("kind")))
            .toList());
    assertEquals("cosmas-ilverton", celebrant(sunday));
  }

  @Test
  void whoever_may_only_look_is_offered_no_press() {
    send(ILL + "/ill", Map.of("until", List.of("2026-12-06")));

    String session = letting.session(letting.user(Role.MINISTER));
    String seen = LettingIn.browser(session).get(WEEK).asString();

    assertFalse(seen.contains("In place of whoever is away"), seen);
  }

  private static void writeTo(String person, String address) {
    Sending.put("/api/people/%s/mail".formatted(person), Map.of("address", address))
        .then()
        .statusCode(204);
  }

  private static String celebrant(Map<String, Object> mass) {
    return Sending.get("/api/masses/" + mass.get("id")).jsonPath().getString("celebrant");
  }

  private MailServerOfTests.Received to(String address) {
    return Asking.only(smtp.received().stream().filter(m -> m.to().equals(address)).toList());
  }

  /** The address of a person's own calendar. */
  private String feed(String login, String person) {
    UUID user = letting.user(login, Role.MINISTER);
    Sending.put(
            "/api/users/" + user,
            Map.of("login", login, "name", "A priest", "role", "minister", "person", person))
        .then()
        .statusCode(200);
    return LettingIn.feedKey(LettingIn.feedPage(letting.session(user)));
  }

  /** What the calendar says of each Mass, by the Mass. */
  private static Map<String, String> states(String key) {
    String calendar =
        LettingIn.nobody()
            .queryParam("key", key)
            .get("/feeds/mine.ics")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    return Biweekly.parse(calendar).first().getEvents().stream()
        .collect(
            Collectors.toMap(
                event -> event.getUid().getValue().split("@")[0],
                event -> event.getStatus().getValue()));
  }
}
