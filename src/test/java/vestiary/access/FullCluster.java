package vestiary.access;

import io.restassured.RestAssured;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.exchange.BringingIn;
import vestiary.feed.AskingForFeeds;
import vestiary.oversight.Granting;
import vestiary.photo.Photographs;
import vestiary.pool.NoteConsent;
import vestiary.regrouping.Regroupings;
import vestiary.reservation.Wishing;
import vestiary.retention.Nights;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Mending;
import vestiary.scenario.Planning;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.sending.Chasing;
import vestiary.telling.Lettering;
import vestiary.users.LettingIn;
import vestiary.vesting.MassId;

/** Fills the present cluster so that every table has a row of it, as its people would. */
@ApplicationScoped
public class FullCluster {

  private final Scenario scenario;
  private final LettingIn letting;
  private final NoteConsent consents;
  private final Nights nights;
  private final Granting granting;
  private final Chasing chasing;
  private final Lettering lettering;
  private final AskingForFeeds feeds;
  private final Regroupings regroupings;

  FullCluster(
      Scenario scenario,
      LettingIn letting,
      NoteConsent consents,
      Nights nights,
      Granting granting,
      Chasing chasing,
      Lettering lettering,
      AskingForFeeds feeds,
      Regroupings regroupings) {
    this.regroupings = regroupings;
    this.feeds = feeds;
    this.lettering = lettering;
    this.chasing = chasing;
    this.nights = nights;
    this.scenario = scenario;
    this.letting = letting;
    this.consents = consents;
    this.granting = granting;
  }

  /** The invented scenario, a week of it mended, planned, carried and answered for. */
  public void load() {
    scenario.load();
    letting.leaveTracesEverywhere(letting.user(Role.SACRISTAN, "ht"));
    Map<String, Object> clash = Mending.clash("2026-12-08", "dalmatic");
    Mending.apply(clash, Mending.remedy(clash, "step"));
    Planning.applied("2026-12-07", "2026-12-13");
    Sending.post(
            "/api/movements/%s/ask".formatted(journey()),
            Map.of("carrier", "Greta Holm", "mail", "greta@home.example"))
        .then()
        .statusCode(200);
    scenario.within(
        scenario.ours(),
        () ->
            consents.note(
                new NoteConsent.Answer(
                    new MassId(UUID.fromString(mass())), List.of("HT-W1-C"), true, "", -1)));
    Sending.post("/api/users/%s/erasure".formatted(letting.user("gone", Role.READER)), Map.of())
        .then()
        .statusCode(204);
    Browsing.send("/settings/retention", Map.of("history", List.of("366")))
        .leadsTo("/settings/retention?done=saved");
    nights.tidy();
    RestAssured.given()
        .redirects()
        .follow(false)
        .formParams(Map.of("name", "Phone", "church", "ht"))
        .post("/devices")
        .then()
        .statusCode(303);
    Browsing.send(
            "/devices/churches/ht/hands",
            Map.of("name", List.of("Greta Holm"), "code", List.of("")))
        .leadsTo("/devices/churches/ht");
    vestOneMore();
    Sending.post("/api/coverage/2026-W50/sign", Map.of()).then().statusCode(201);
    lendToAThird();
    photographAndCount();
    Sending.post("/api/reservations", Map.of("set", "HT-W3", "mass", mass()))
        .then()
        .statusCode(201);
    Wishing.wish("HT-B1", mass());
    Sending.post("/api/sets/HT-R1/out", Map.of("church", "sa")).then().statusCode(200);
    Browsing.send("/labels/printed", Map.of("codes", List.of("HT-R1"), "which", List.of("all")))
        .leadsTo("/labels?done=printed");
    Sending.post("/api/people/ambrose-tarnwick/absences", Map.of("from", "2026-12-28"))
        .then()
        .statusCode(201);
    Sending.put(
            "/api/people/ambrose-tarnwick",
            Map.of("name", "Ambrose Tarnwick", "title", "Fr", "churches", List.of("ht")))
        .then()
        .statusCode(200);
    String theirs =
        Sending.mass(
                Map.of("church", "ht", "start", "2026-12-10T15:00", "celebrant", "silas-umberley"))
            .get("id")
            .toString();
    Browsing.send("/people/silas-umberley/arrivals/" + theirs, Map.of("arrives", List.of("14:40")))
        .leadsTo("/people/silas-umberley/arrivals?done=saved");
    Sending.put(
            "/api/masses/%s/serving".formatted(theirs),
            Map.of("serving", List.of(Map.of("person", "tamsin-q", "role", "server"))))
        .then()
        .statusCode(200);
    nameSomebodyElse();
    chasing.note();
    Browsing.send("/churches/sj/closing", Map.of("from", List.of("2099-12-07")))
        .leadsTo("/churches/sj/closing?done=closed");
    Browsing.send(
            "/patterns/terms",
            Map.of(
                "name", List.of("Autumn"),
                "first", List.of("2026-09-01"),
                "last", List.of("2026-12-18")))
        .leadsTo("/patterns/terms?done=kept");
    tellPeople();
    BringingIn.leaveTraces();
    regroupings.leaveTraces(scenario.ours());
    RestAssured.get("/api/backups/newest.zip").then().statusCode(200);
  }

  /** One celebrant in the place of another. */
  private static void nameSomebodyElse() {
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
                        "ambrose-tarnwick")),
                "inPlace",
                true))
        .then()
        .statusCode(201);
  }

  /** Letters, Mass times for the people, and the sheet for the bishop's office. */
  private void tellPeople() {
    Browsing.send("/letters/settings", Map.of("weekday", List.of("4")))
        .leadsTo("/letters?done=saved");
    Browsing.press("/times/publish").leadsTo("/times?done=published");
    Sending.put("/api/masses/%s/office-sheet".formatted(mass()), Map.of("parking", "Here"))
        .then()
        .statusCode(200);
    Asking.change(Asking.mass("ol", "2026-12-18T09:00"), Map.of("start", "2026-12-18T09:30"));
    lettering.leaveTraces(letting.user("written-to", Role.READER));
    feeds.leaveTraces();
  }

  private static void photographAndCount() {
    RestAssured.given()
        .multiPart("photo", "photo.png", Photographs.png(), "image/png")
        .post("/api/pieces/HT-W1-C/photos")
        .then()
        .statusCode(201);
    Sending.post("/api/stocktakes", Map.of("church", "sm")).then().statusCode(201);
    Sending.post("/api/pieces/HT-W1-C/values", Map.of("amount", "1500", "currency", "USD"))
        .then()
        .statusCode(200);
  }

  /** One who came unexpected, how tall he is, and what was worn on the day before. */
  private void vestOneMore() {
    Sending.post(
            "/api/masses/%s/one-more".formatted(Sending.mass("ht", "2026-12-09T15:00").get("id")),
            Map.of("role", "deacon", "way", "own"))
        .then()
        .statusCode(201);
    Sending.put(
            "/api/masses/%s/worn".formatted(Sending.mass("ht", "2026-11-29T15:00").get("id")),
            Map.of("pieces", List.of(Map.of("piece", "HT-W1-C"))))
        .then()
        .statusCode(200);
    RestAssured.given()
        .redirects()
        .follow(false)
        .header("Idempotency-Key", "0".repeat(32))
        .formParams(Map.of("height", "186"))
        .post("/people/ambrose-tarnwick/height")
        .then()
        .statusCode(303);
  }

  /** Neither of the two that a test is about, for both sides of a lending see it. */
  private void lendToAThird() {
    UUID third = scenario.openAnother();
    granting.letIn(scenario.ours(), third);
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
        .statusCode(201);
  }

  /** The Mass of the jubilee. */
  String mass() {
    return Asking.mass("sa", "2026-12-08T18:30").get("id").toString();
  }

  /** A journey of the plan. */
  String journey() {
    return Asking.list("/api/movements?from=2026-12-07&to=2026-12-13").get(0).get("id").toString();
  }
}
