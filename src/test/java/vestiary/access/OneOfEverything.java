package vestiary.access;

import io.restassured.RestAssured;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.exchange.BringingIn;
import vestiary.oversight.Granting;
import vestiary.photo.Photographs;
import vestiary.reservation.Wishing;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.telling.Lettering;
import vestiary.users.LettingIn;

/** One thing of each kind that addresses name. A new address needs a line here. */
@ApplicationScoped
class OneOfEverything {

  private final Scenario scenario;
  private final LettingIn letting;
  private final Granting granting;
  private final Lettering lettering;

  OneOfEverything(Scenario scenario, LettingIn letting, Granting granting, Lettering lettering) {
    this.lettering = lettering;
    this.scenario = scenario;
    this.letting = letting;
    this.granting = granting;
  }

  /**
   * @param first beginnings of addresses, and what stands there for the first variable part
   * @param care a time in care of the piece
   * @param photo a photograph of the piece
   */
  record Names(Map<String, String> first, String care, String photo) {

    /** The address with its variable parts filled in. */
    String fill(String path) {
      String dated = path.replace("{date}", "2026-12-08").replace("{year}", "2027");
      if (!dated.contains("{")) {
        return dated;
      }
      String found =
          first.entrySet().stream()
              .filter(entry -> path.startsWith(entry.getKey()))
              .map(Map.Entry::getValue)
              .findFirst()
              .orElseThrow(() -> new AssertionError("what stands in " + path + "?"));
      return dated
          .replaceFirst("^/care/\\{code}/\\{id}", "/care/HT-W1-C/" + care)
          .replaceFirst("/care/\\{id}", "/care/" + care)
          .replaceFirst("/photos/\\{id}", "/photos/" + photo)
          .replaceFirst("\\{[^}]+}", found)
          .replaceAll("\\{[^}]+}", "1");
    }
  }

  /** Of the invented cluster, which is loaded; a week of it is planned for this. */
  Names names() {
    Map<String, String> first = new LinkedHashMap<>();
    String mass = Asking.mass("sa", "2026-12-08T18:30").get("id").toString();
    String pattern = Asking.list("/api/patterns").get(0).get("id").toString();
    String plan = Planning.applied("2026-12-07", "2026-12-13").get("id").toString();
    String journey =
        Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id").toString();
    String person = Asking.list("/api/people").get(0).get("slug").toString();
    String clash = Asking.clashes("2026-11-30", "2026-12-31").get(0).get("id").toString();
    String care =
        Sending.post("/api/pieces/HT-W1-C/care", Map.of("from", "2026-12-20", "reason", "Theirs"))
            .then()
            .statusCode(201)
            .extract()
            .path("id")
            .toString();
    RestAssured.given()
        .redirects()
        .follow(false)
        .formParams(Map.of("name", "Theirs", "church", "ht"))
        .post("/devices")
        .then()
        .statusCode(303);
    String device = Browsing.page("/devices").action("/devices/[^/]+/end").split("/")[2];
    String proper = Asking.list("/api/propers").get(0).get("id").toString();
    String signed =
        Sending.post("/api/coverage/2026-W50/sign", Map.of("note", "Theirs"))
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    UUID third = scenario.openAnother();
    String lending =
        Sending.post(
                "/api/lendings",
                Map.of(
                    "to",
                    third.toString(),
                    "from",
                    "2099-12-07",
                    "until",
                    "2099-12-13",
                    "pieces",
                    List.of("HT-W2")))
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String leave = granting.letIn(scenario.ours(), third).toString();
    UUID user = letting.user(Role.READER);
    String token = letting.tokenId(user);
    String link = letting.link(user);
    first.put("/review/", signed);
    String brought = BringingIn.pieces("OF-EV-1");
    first.put("/import/", brought);
    first.put("/api/imports/", brought);
    String reservation =
        Sending.post("/api/reservations", Map.of("set", "HT-W3", "mass", mass))
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String wish = Wishing.wish("HT-B1", mass);
    first.put("/reservations/wishes/", wish);
    first.put("/api/wishes/", wish);
    first.put("/reservations/", reservation);
    first.put("/api/reservations/", reservation);
    first.put("/lendings/", lending);
    first.put("/api/lendings/", lending);
    first.put("/clusters/", leave);
    first.put("/api/clusters/", leave);
    first.put("/api/exports/", "people");
    first.put("/history/vestments/", "HT-W1-C");
    first.put("/history/people/", person);
    first.put("/history/churches/", "ht");
    first.put("/history/users/", user.toString());
    Lettering.Traces letter = lettering.leaveTraces(user);
    first.put("/letters/stop/", letter.link());
    first.put("/letters/", letter.letter());
    first.put("/api/letters/", letter.letter());
    first.put("/api/parishes/", Asking.list("/api/parishes").get(0).get("id").toString());
    first.put("/people/", person);
    first.put("/mine/absences/", person);
    first.put("/devices/churches/", "ht");
    first.put("/devices/", device);
    first.put("/api/users/", user.toString());
    first.put("/history/", mass);
    first.put("/vestments/sets/", "HT-W1");
    first.put("/vestments/", "HT-W1-C");
    first.put("/api/pieces/", "HT-W1-C");
    first.put("/api/sets/", "HT-W1");
    first.put("/s/", "HT-W1");
    first.put("/api/whereabouts/", "HT-W1");
    String assignment =
        Sending.post(
                "/api/celebrants/assignments",
                Map.of(
                    "assignments",
                    List.of(
                        Map.of(
                            "mass",
                            Asking.mass("ht", "2026-12-16T12:10").get("id"),
                            "celebrant",
                            "cosmas-ilverton",
                            "expected",
                            "ambrose-tarnwick"))))
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    first.put("/celebrants/assignments/", assignment);
    first.put("/api/celebrants/assignments/", assignment);
    first.put("/api/celebrants/masses/", mass);
    first.put("/masses/", mass);
    first.put("/api/masses/", mass);
    first.put("/patterns/terms/", term());
    first.put("/patterns/", pattern);
    first.put("/api/patterns/", pattern);
    first.put("/plans/", plan);
    first.put("/api/plans/", plan);
    first.put("/movements/", journey);
    first.put("/api/movements/", journey);
    first.put("/consents/", mass);
    first.put("/api/consents/", mass);
    first.put("/api/people/", person);
    first.put("/clashes/", clash);
    first.put("/api/clashes/", clash);
    first.put("/churches/", "ht");
    first.put("/api/churches/", "ht");
    first.put("/propers/", proper);
    first.put("/api/propers/", proper);
    first.put("/users/", user.toString());
    first.put("/api/tokens/", token);
    first.put("/account/passkeys/", letting.passkeyId(user));
    first.put("/mail/", letting.mailLink(user));
    first.put("/account/tokens/", token);
    first.put("/welcome/", link);
    String photo =
        RestAssured.given()
            .multiPart("photo", "photo.png", Photographs.png(), "image/png")
            .post("/api/pieces/HT-W1-C/photos")
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    String stocktake =
        Sending.post("/api/stocktakes", Map.of("church", "ht"))
            .then()
            .statusCode(201)
            .extract()
            .path("id");
    first.put("/care/", "HT-W1-C");
    first.put("/inventories/", "ht");
    first.put("/stocktakes/", stocktake);
    first.put("/api/stocktakes/", stocktake);
    return new Names(first, care, photo);
  }

  private static String term() {
    Browsing.send(
            "/patterns/terms",
            Map.of(
                "name", List.of("Theirs"),
                "first", List.of("2026-09-01"),
                "last", List.of("2026-12-18")))
        .leadsTo("/patterns/terms?done=kept");
    return Browsing.page("/patterns/terms").action("/patterns/terms/[^/]+/removal").split("/")[3];
  }
}
