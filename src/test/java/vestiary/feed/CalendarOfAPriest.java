package vestiary.feed;

import io.restassured.response.Response;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.UUID;
import vestiary.access.Role;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

/** Father Ilverton's own calendar, and what he does to have something in it. */
@ApplicationScoped
class CalendarOfAPriest {

  static final String ADDRESS = "/feeds/mine.ics";

  private final Scenario scenario;
  private final LettingIn letting;

  private String session;
  private String key;

  CalendarOfAPriest(Scenario scenario, LettingIn letting) {
    this.scenario = scenario;
    this.letting = letting;
  }

  /** The invented cluster, in which he has signed in and made a key. */
  void begin() {
    scenario.load();
    UUID user = letting.user("cosmas", Role.MINISTER);
    Sending.put(
            "/api/users/" + user,
            Map.of(
                "login",
                "cosmas",
                "name",
                "Some minister",
                "role",
                "minister",
                "person",
                "cosmas-ilverton"))
        .then()
        .statusCode(200);
    session = letting.session(user);
    key = LettingIn.feedKey(LettingIn.feedPage(session));
  }

  String session() {
    return session;
  }

  String key() {
    return key;
  }

  Response ask() {
    return ask(key);
  }

  /** Another's own calendar. */
  static Response ask(String key) {
    return LettingIn.nobody().queryParam("key", key).get(ADDRESS);
  }

  /** Names him for a new Mass and answers its id. */
  static String mass(String church, String start) {
    return Sending.mass(Map.of("church", church, "start", start, "celebrant", "cosmas-ilverton"))
        .get("id")
        .toString();
  }

  /** Two Masses of one day, at three and at six, with 25 minutes on the road between them. */
  static TwoMasses twoOn(String day) {
    Sending.put("/api/journeys", Map.of("from", "ht", "to", "sa", "minutes", 25))
        .then()
        .statusCode(200);
    return new TwoMasses(mass("ht", day + "T15:00"), mass("sa", day + "T18:00"));
  }

  record TwoMasses(String first, String second) {}
}
