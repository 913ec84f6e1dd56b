package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static vestiary.scenario.Sending.get;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ImportResourceTest {

  private static final String JOURNEYS = "from,to,minutes";
  private static final String MASSES = "church,date,time,minutes,celebration";
  private static final String PIECES = "code,kind,colours,set,home,place";
  private static final String PATTERNS = "church,rrule,starts,time,minutes";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "&dryRun=true", "&dryRun="})
  void nothing_changes_unless_it_is_asked_for(String dryRun) {
    byte[] file = Csv.file(JOURNEYS, "ht,sa,14");

    Response answer = refusing.unchanged(() -> send("journeys" + dryRun, file));

    answer
        .then()
        .statusCode(200)
        .body("what", equalTo("journeys"))
        .body("lines", equalTo(1))
        .body("bad", hasSize(0))
        .body("done", equalTo(false));
  }

  @Test
  void a_good_list_is_brought_in_whole() {
    bringIn("journeys", JOURNEYS, "ht,sa,14").body("done", equalTo(true));

    assertEquals(
        List.of(14, 14), Asking.list("/api/journeys").stream().map(j -> j.get("minutes")).toList());
  }

  @Test
  void masses_and_patterns_bring_in_who_else_vests() {
    bringIn(
        "masses",
        MASSES + ",bishop,ministers,also",
        "ht,2026-12-09,15:00,60,,yes,server 2:120,cope");
    bringIn(
        "patterns", PATTERNS + ",ministers", "sa,FREQ=WEEKLY;BYDAY=WE,2026-12-02,19:00,60,reader");

    Map<String, Object> mass = Asking.mass("ht", "2026-12-09T15:00");
    assertEquals(true, mass.get("bishop"));
    assertEquals(List.of("cope"), mass.get("also"));
    assertEquals(
        List.of(Map.of("kind", "server", "count", 2, "sizes", List.of("120"))),
        mass.get("ministers"));
    assertEquals(
        List.of(Map.of("kind", "reader", "count", 1, "sizes", List.of())),
        Asking.mass("sa", "2026-12-09T19:00").get("ministers"));
  }

  @Test
  void one_bad_line_among_good_ones_keeps_all_out() {
    byte[] file =
        Csv.file(PIECES, "W1,chasuble,white,,ht,", "W2,chasuble,blue,,ht,", "W3,alb,,,ht,");

    refusing
        .unchanged(() -> send("pieces", file))
        .then()
        .statusCode(200)
        .body("lines", equalTo(2))
        .body("bad", hasSize(1))
        .body("bad[0].line", equalTo(3))
        .body("bad[0].column", equalTo("colours"))
        .body("bad[0].reason", containsString("\"blue\" cannot stand here"))
        .body("done", equalTo(false));
    refusing
        .refused(422, "bad-lines", () -> send("pieces&dryRun=false", file))
        .body("detail", equalTo("Nothing was brought in: one line is not understood."))
        .body("bad[0].line", equalTo(3))
        .body("bad[0].column", equalTo("colours"))
        .body("bad[0].reason", containsString("\"blue\" cannot stand here"));
  }

  @Test
  void the_lists_of_the_demo_in_their_order_are_the_invented_cluster() {
    scenario.empty();

    bringInTheScenario();

    assertEquals(6, Asking.list("/api/churches").size());
    assertEquals(2, Asking.clashes("2026-12-08", "2026-12-08").size());
  }

  @Test
  void lists_that_are_sent_again_double_nothing() {
    scenario.empty();
    bringInTheScenario();
    Map<String, Integer> once = sizes();

    bringInTheScenario();

    assertEquals(once, sizes());
  }

  @Test
  void a_line_that_is_sent_again_changes_what_it_names() {
    bringIn("journeys", JOURNEYS, "ht,sa,14");
    bringIn("pieces", PIECES, "W1,chasuble,white,W1-SET,ht,drawer 1");
    bringIn("masses", MASSES, "ht,2026-12-08,18:30,60,");
    bringIn("patterns", PATTERNS, "ht,FREQ=WEEKLY;BYDAY=SU,2026-11-29,10:30,60");

    bringIn("journeys", JOURNEYS, "sa,ht,20");
    bringIn("pieces", PIECES, "w1,chasuble,white|gold,W1-SET,sa,drawer 2");
    bringIn("masses", MASSES, "ht,2026-12-08,18:30,90,");
    bringIn("patterns", PATTERNS, "ht,FREQ=WEEKLY;BYDAY=SU,2026-11-29,10:30,75");

    assertEquals(
        List.of(20, 20), Asking.list("/api/journeys").stream().map(j -> j.get("minutes")).toList());
    Map<String, Object> piece = Asking.only(Asking.list("/api/pieces"));
    assertEquals("drawer 2", piece.get("place"));
    assertEquals("sa", piece.get("home"));
    assertEquals(90, Asking.only(Asking.masses("ht", "2026-12-08")).get("minutes"));
    assertEquals(75, Asking.only(Asking.list("/api/patterns")).get("minutes"));
    assertEquals(75, Asking.only(Asking.masses("ht", "2026-12-13")).get("minutes"));
  }

  @Test
  void a_changed_pattern_leaves_the_mass_alone_that_somebody_changed() {
    bringIn("patterns", PATTERNS, "ht,FREQ=WEEKLY;BYDAY=SU,2026-11-29,10:30,60");
    Asking.change(Asking.mass("ht", "2026-12-13T10:30"), Map.of("minutes", 120));

    bringIn("patterns", PATTERNS, "ht,FREQ=WEEKLY;BYDAY=SU,2026-11-29,10:30,75");

    assertEquals(120, Asking.mass("ht", "2026-12-13T10:30").get("minutes"));
    assertEquals(75, Asking.mass("ht", "2026-12-20T10:30").get("minutes"));
  }

  @Test
  void bytes_that_are_no_utf_8_are_named_by_their_line() {
    byte[] latin =
        (PIECES + "\nW1,chasuble,white,,ht,\nW2,chasuble,white,,ht,Prie-dieu à gauche\n")
            .getBytes(ISO_8859_1);

    assertFileRefused("pieces", latin, 3, "not UTF-8 from this line on");
  }

  @Test
  void a_byte_order_mark_and_semicolons_are_read_as_a_spreadsheet_writes_them() {
    byte[] file = "\uFEFFfrom;to;minutes\r\nht;sa;14\r\n".getBytes(UTF_8);

    send("journeys&dryRun=false", file).then().statusCode(200).body("done", equalTo(true));

    assertEquals(2, Asking.list("/api/journeys").size());
  }

  @Test
  void a_column_that_is_missing_is_named() {
    assertFileRefused("journeys", Csv.file("from,minutes", "ht,14"), 1, "missing: to.");
  }

  @Test
  void a_column_that_is_not_known_is_told_and_not_used() {
    bringIn("journeys", JOURNEYS + ",toll", "ht,sa,14,free")
        .body("unknownColumns", equalTo(List.of("toll")));
  }

  @Test
  void a_list_that_is_no_list_of_ours_is_refused() {
    byte[] file = Csv.file(JOURNEYS, "ht,sa,14");

    refusing.notThere(() -> send("organs&dryRun=false", file));
    refusing.unfit(() -> send("", Csv.file("a,b", "1,2")), "what");
    refusing.unfit(() -> send("journeys&dryRun=perhaps", file), "dryRun");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", " ", "\n\n", "\uFEFF"})
  void an_empty_file_is_refused(String text) {
    assertFileRefused("journeys", text.getBytes(UTF_8), 1, "The file is empty.");
  }

  @Test
  void a_file_without_a_line_below_its_columns_says_so() {
    bringIn("journeys", JOURNEYS).body("lines", equalTo(0));
  }

  @Test
  void a_hundred_thousand_lines_are_refused_at_once_with_the_limit() {
    byte[] file = (JOURNEYS + "\n" + "ht,sa,14\n".repeat(100_000)).getBytes(UTF_8);

    assertTimeout(
        Duration.ofSeconds(5),
        () -> assertFileRefused("journeys", file, 20_002, "more than 20,000 lines"));
  }

  @Test
  void more_than_eight_megabytes_are_refused_with_the_limit() {
    byte[] file = (JOURNEYS + "\n" + " ".repeat(8 << 20)).getBytes(UTF_8);

    refusing
        .refused(413, "too-large", () -> send("journeys&dryRun=false", file))
        .body("detail", containsString("8 MB"));
  }

  @ParameterizedTest
  @CsvSource({
    "journeys,  'from,to,minutes',                       'ht,nowhere,14',                    to",
    "masses,    'church,date,time,minutes',              'nowhere,2026-12-08,18:30,60',      church",
    "masses,    'church,date,time,minutes,celebration',  'ht,2026-12-08,18:30,60,ascension', celebration",
    "masses,    'church,date,time,minutes',              'ht,2027-03-14,02:30,60',           time",
    "masses,    'church,date,time,minutes,celebrant',    'ht,2026-12-08,18:30,60,ambros',    celebrant",
    "patterns,  'church,rrule,starts,time,minutes,celebrant', 'ht,FREQ=DAILY,2026-12-08,08:00,30,ambros', celebrant",
    "patterns,  'church,rrule,starts,time,minutes',      'nowhere,FREQ=DAILY,2026-12-08,08:00,30', church",
    "pieces,    'code,kind,colours,home',                'W1,chasuble,white,nowhere',        home",
    "care,      'set,from,reason',                       'NO-SET,2026-12-08,mending',        set",
    "care,      'piece,from,reason',                     'NO-PIECE,2026-12-08,mending',      piece",
    "out,       'piece,whom,from,due',                   'NO-PIECE,Them,2026-11-08,2026-12-08', piece",
    "out,       'set,whom,from,due',                     'NO-SET,Them,2026-11-08,2026-12-08', set",
    "cluster,   'name,calendar,timeZone,languages',      'Valley,narnia,America/Chicago,en', calendar"
  })
  void a_line_that_names_what_is_not_there_is_named_with_its_column(
      String what, String header, String line, String column) {
    byte[] file = Csv.file(header, line);

    refusing
        .refused(422, "bad-lines", () -> send(what + "&dryRun=false", file))
        .body("bad", hasSize(1))
        .body("bad[0].line", equalTo(2))
        .body("bad[0].column", equalTo(column));
    refusing.unchanged(() -> send(what, file)).then().statusCode(200).body("bad", hasSize(1));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=HYPERLINK(1)", "+1", "-1+1", "@SUM(A1)"})
  void what_looks_like_a_formula_stays_the_text_it_is(String text) {
    bringIn("pieces", PIECES, "W1,chasuble,white,,ht," + text);

    get("/api/pieces/W1").then().body("place", equalTo(text));
  }

  @ParameterizedTest
  @CsvSource({
    "'HT-W1-C,xx,2026-11-08,2026-12-08', church, is not in the cluster",
    "'HT-W1-C,sa,2026-12-05,2026-12-08', from, has not gone yet",
    "'SA-W3-C,ht,2026-11-29,2026-12-08', from, is in care",
    "'OL-D1,ht,2026-11-29,2026-12-08', from, is out then"
  })
  void what_cannot_be_out_is_said_of_its_line(String line, String column, String reason) {
    scenario.load();
    byte[] file = Csv.file("piece,church,from,due", line);

    refusing
        .refused(422, "bad-lines", () -> send("out&dryRun=false", file))
        .body("bad", hasSize(1))
        .body("bad[0].column", equalTo(column))
        .body("bad[0].reason", containsString(reason));
  }

  @Test
  void what_is_out_can_be_brought_in_again_with_another_day() {
    scenario.load();
    bringIn("out", "piece,whom,from,due", "OL-D1,the cathedral,2026-11-13,2026-12-04");

    assertEquals(
        List.of("2026-12-05T00:00:00-06:00"),
        Asking.list("/api/out").stream().map(one -> one.get("due")).toList());
  }

  @Test
  void the_same_list_from_two_people_at_one_moment_is_brought_in_once() {
    scenario.empty();

    for (ImportWhat what : ImportWhat.values()) {
      byte[] file = file(what);
      List<CompletableFuture<Integer>> both =
          Stream.of(1, 2)
              .map(
                  person ->
                      CompletableFuture.supplyAsync(
                          () -> send(what.id() + "&dryRun=false", file).statusCode(),
                          task -> new Thread(task).start()))
              .toList();

      assertEquals(
          List.of(200, 200), both.stream().map(CompletableFuture::join).toList(), what.id());
    }

    Map<String, Integer> together = sizes();
    scenario.load();
    assertEquals(sizes(), together);
  }

  private void assertFileRefused(String what, byte[] file, int line, String reason) {
    refusing
        .refused(422, "bad-lines", () -> send(what + "&dryRun=false", file))
        .body("bad", hasSize(1))
        .body("bad[0].line", equalTo(line))
        .body("bad[0].reason", containsString(reason));
    refusing
        .unchanged(() -> send(what, file))
        .then()
        .statusCode(200)
        .body("bad[0].reason", containsString(reason));
  }

  private static Map<String, Integer> sizes() {
    return Map.of(
        "churches", size("/api/churches"),
        "journeys", size("/api/journeys"),
        "people", size("/api/people"),
        "patterns", size("/api/patterns"),
        "pieces", size("/api/pieces"),
        "sets", size("/api/sets"),
        "masses", size("/api/masses?from=2026-11-30&to=2026-12-13"));
  }

  private static int size(String address) {
    return Asking.list(address).size();
  }

  private static void bringInTheScenario() {
    Stream.of(ImportWhat.values())
        .forEach(
            what ->
                send(what.id() + "&dryRun=false", file(what))
                    .then()
                    .statusCode(200)
                    .body("done", equalTo(true)));
  }

  private static byte[] file(ImportWhat what) {
    return what == ImportWhat.CHURCHES || what.isDated()
        ? DemoLists.scenario(what.id())
        : DemoLists.demo(what.id());
  }

  private static ValidatableResponse bringIn(String what, String... lines) {
    return send(what + "&dryRun=false", Csv.file(lines)).then().statusCode(200);
  }

  private static Response send(String query, byte[] file) {
    return given().contentType("text/csv").body(file).post("/api/imports?what=" + query);
  }
}
