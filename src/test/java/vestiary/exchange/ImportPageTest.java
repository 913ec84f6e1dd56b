package vestiary.exchange;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.upload;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.access.Role;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;
import vestiary.users.LettingIn;

@QuarkusTest
class ImportPageTest {

  private static final byte[] GOOD = Csv.file("from,to,minutes", "ht,sa,14");

  @Inject Scenario scenario;
  @Inject Refusing refusing;
  @Inject LettingIn letting;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void the_page_offers_every_list_with_its_columns() {
    Page page = Browsing.page("/import").isHeaded("Import");

    for (ImportWhat what : ImportWhat.values()) {
      page.says(ImportWords.name(what));
      what.columns().forEach(column -> page.says(column.name()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_list_that_an_address_names_is_chosen(ImportWhat what) {
    Page page = Browsing.page("/import?what=" + what.id());

    assertEquals(List.of(what.id()), page.form("/import").get("what"));
  }

  @Test
  void trying_changes_nothing_and_says_what_would_come_of_it() {
    upload("journeys", "true", GOOD)
        .is(200)
        .isHeaded("Import: Journeys")
        .says("Tried, nothing changed yet: one line can be brought in.");

    assertEquals(0, Asking.list("/api/journeys").size());
  }

  @Test
  void a_good_list_is_brought_in() {
    upload("journeys", "false", GOOD).is(200).says("One line was brought in.");

    assertEquals(2, Asking.list("/api/journeys").size());
  }

  @Test
  void a_bad_line_is_shown_as_it_stands_and_nothing_is_brought_in() {
    byte[] file = Csv.file("from,to,minutes", "ht,sa,14", "ht,<script>,14");

    upload("journeys", "false", file)
        .is(200)
        .says(
            "Nothing was brought in: one line is not understood.",
            "one line understood",
            "3 Church reached \"<script>\" cannot stand here.",
            "ht,<script>,14");
    upload("journeys", "true", file)
        .is(200)
        .says("Tried, nothing changed yet: one line is not understood.");
    assertEquals(0, Asking.list("/api/journeys").size());
  }

  @Test
  void a_needed_column_that_the_file_lacks_is_asked_for_at_its_field() {
    upload("journeys", "false", Csv.file("from,minutes", "ht,14"))
        .is(400)
        .faults("column-to", "Choose the column of the file, or say what holds on every line.");
  }

  @Test
  void a_list_that_is_none_is_said_at_its_field() {
    refusing
        .unchanged(() -> Browsing.sendList("organs", GOOD))
        .is(400)
        .faults("what", "Choose what is in the list.");
  }

  @Test
  void an_empty_file_is_said_at_its_field_and_the_list_stays_chosen() {
    Page page = refusing.unchanged(() -> Browsing.sendList("journeys", new byte[0]));

    page.is(400).faults("file", "Choose a file that has something in it.");
    assertEquals(List.of("journeys"), page.form("/import").get("what"));
  }

  @Test
  void more_than_eight_megabytes_are_refused_with_a_page() {
    refusing
        .unchanged(() -> Browsing.send("/import", Map.of("file", List.of("x".repeat(8 << 20)))))
        .is(413)
        .isHeaded("Too large")
        .says("What was sent is larger than 8 MB, which is the most.")
        .links("/import");
  }

  @Test
  void a_file_that_somebody_sent_is_seen_by_nobody_else() {
    String address = Browsing.sendList("journeys", GOOD).wayOn();
    String other = letting.token(letting.user("another", Role.ADMINISTRATOR));

    given().auth().oauth2(other).accept("text/html").get(address).then().statusCode(404);
    Browsing.page(address).says("A: from");
  }

  @Test
  void a_file_of_another_make_is_understood_by_its_names_and_values() {
    byte[] file =
        utf8(
            "\uFEFFBemerkung;Iglesia;Datum;Uhrzeit;Farbe des Himmels",
            "Chor;HT;13.12.2026;18.30 Uhr;blau",
            ";sa;14.12.26;8.00;");

    Browsing.page(Browsing.sendList("masses", file).wayOn())
        .says("13.12.2026, 14.12.26", "Not used: Farbe des Himmels.");
    upload("masses", "false", file).is(200).says("Two lines were brought in.");

    assertEquals(
        List.of("2026-12-13T18:30", "2026-12-14T08:00"),
        Asking.list("/api/masses?from=2026-12-13&to=2026-12-14").stream()
            .map(mass -> mass.get("start").toString().substring(0, 16))
            .toList());
  }

  @Test
  void windows_letters_are_read_and_said_to_be() {
    byte[] file =
        "church,date,time,note\nht,2026-12-13,10:00,Gr\u00fc\u00dfe\n"
            .getBytes(Charset.forName("windows-1252"));

    Browsing.page(Browsing.sendList("masses", file).wayOn()).says("read as Windows-1252");
    upload("masses", "false", file).is(200).says("One line was brought in.");

    assertEquals(
        "Gr\u00fc\u00dfe",
        Asking.list("/api/masses?from=2026-12-13&to=2026-12-13").get(0).get("note"));
  }

  @Test
  void days_that_can_be_read_both_ways_are_asked_for() {
    byte[] file = Csv.file("church,date,time", "ht,8/12/2026,10:00");
    String address = Browsing.sendList("masses", file).wayOn();

    Browsing.goOn(address, Map.of("dryRun", "false"))
        .is(400)
        .faults("days", "Say how days are written; the file can be read both ways.");
    Browsing.goOn(address, Map.of("dryRun", "false", "days", "month-day-year"))
        .is(200)
        .says("One line was brought in.");

    assertEquals(1, Asking.list("/api/masses?from=2026-08-12&to=2026-08-12").size());
  }

  @Test
  void one_day_past_the_twelfth_tells_the_order_of_all() {
    byte[] file = Csv.file("church,date,time", "ht,12/8/2026,10:00", "ht,12/13/2026,10:00");

    upload("masses", "false", file).is(200).says("Two lines were brought in.");

    assertEquals(1, Asking.list("/api/masses?from=2026-12-08&to=2026-12-08").size());
  }

  @Test
  void a_file_that_is_no_list_is_refused_at_its_field() {
    Map.of(
            new byte[] {'P', 'K', 3, 4, 0},
            "packed",
            new byte[] {(byte) 0xD0, (byte) 0xCF, 0x11, (byte) 0xE0},
            "save it there as CSV UTF-8",
            new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, '\n', 0},
            "The file is a picture",
            new byte[] {1, 0, 2, 0, 0, (byte) 0xFE},
            "no text",
            Csv.file("from,to,minutes"),
            "Below its first line the list is empty.",
            Csv.file("a,".repeat(1000), "1"),
            "at most 200 are read")
        .forEach(
            (file, sentence) ->
                refusing
                    .unchanged(() -> Browsing.sendList("journeys", file))
                    .is(400)
                    .says(sentence));
  }

  @Test
  void what_stands_on_some_lines_alone_is_said_once_for_the_others() {
    byte[] file =
        Csv.file("church,date,time,minutes", "ht,3.2.2027,6 pm,45", "sa,4.2.2027,18.30 h,");
    String address = Browsing.sendList("masses", file).wayOn();

    Browsing.page(address).says("On lines where it is empty");
    Browsing.goOn(address, Map.of("dryRun", "false", "same-minutes", "30"))
        .says("Two lines were brought in.");

    assertEquals(
        List.of(45, 30),
        Asking.list("/api/masses?from=2027-02-03&to=2027-02-04").stream()
            .map(mass -> mass.get("minutes"))
            .toList());
  }

  @Test
  void what_the_file_lacks_is_folded_away_and_sent_all_the_same() {
    String address =
        Browsing.sendList("masses", Csv.file("church,date,time", "ht,3.2.2027,6 pm")).wayOn();

    Page page = Browsing.page(address).says("Not in the file: nineteen columns");

    assertEquals(ImportWhat.MASSES.columns().size(), columns(page, address).size());
  }

  private static List<String> columns(Page page, String address) {
    return page.form(address).keySet().stream().filter(name -> name.startsWith("column-")).toList();
  }

  @Test
  void columns_of_one_name_are_told_apart_by_their_letters() {
    byte[] file = Csv.file("from,to,minutes,minutes", "ht,sa,14,15");
    String address = Browsing.sendList("journeys", file).wayOn();

    Browsing.page(address).says("C: minutes", "D: minutes", "Not used: D: minutes.");
    Browsing.goOn(address, Map.of("dryRun", "false", "column-minutes", "3"))
        .says("One line was brought in.");

    assertEquals(15, Asking.list("/api/journeys").get(0).get("minutes"));
  }

  @Test
  void a_long_list_is_worked_through_beside_and_every_bad_line_is_named() {
    int lines = AskImport.SHORT + 100;
    byte[] file = Csv.file("from,to,minutes" + "\nht,nowhere,14".repeat(lines));
    String address = Browsing.sendList("journeys", file).wayOn();

    Browsing.send(address, Browsing.page(address).form(address)).leadsTo(address);

    String id = address.substring("/import/".length());
    assertEquals(
        "tried", given().get("/api/imports/%s?wait=30".formatted(id)).jsonPath().get("status"));
    Page first = Browsing.page(address).says("1 to 100 of", "More lines");
    first.links(address + "?page=2");
    assertTrue(given().get("/api/imports/" + id).jsonPath().getInt("badLines") >= lines);
  }

  @Test
  void a_list_that_was_brought_in_is_undone_by_one_press() {
    upload("journeys", "false", GOOD).says("Undo this import");
    Page page = Browsing.page("/import").says("Journeys: one line, imported on");
    String undo = undoOf(page);

    Browsing.press(undo).leadsTo(undo.replace("/undo", ""));

    assertEquals(0, Asking.list("/api/journeys").size());
    Browsing.page("/import").says("undone on").keepsSilentOn("Undo");
    Browsing.page(undo.replace("/undo", "")).says("It was undone: all is as it was before.");
  }

  private static String undoOf(Page page) {
    return page.action("/import/[-0-9a-f]+/undo");
  }

  private static byte[] utf8(String... lines) {
    return String.join("\r\n", lines).getBytes(StandardCharsets.UTF_8);
  }
}
