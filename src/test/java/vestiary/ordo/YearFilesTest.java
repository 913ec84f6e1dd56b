package vestiary.ordo;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.get;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** The files, read back with the libraries and held against the days that the API answers. */
@QuarkusTest
class YearFilesTest {

  private static final String SPAN = "from=2026-11-29&to=2027-11-27";

  /** Of a line without its end, RFC 5545, 3.1. */
  private static final int LONGEST_LINE = 75;

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_calendar_file_has_an_event_for_every_day_with_its_celebration_and_colour() {
    removeTheDaysOfTheDiocese();
    List<VEvent> events = events("/year/2027.ics").stream().filter(e -> !isOfChurch(e)).toList();
    List<Map<String, Object>> days = Asking.list("/api/calendars/us/days?" + SPAN);

    assertEquals(364, days.size());
    assertEquals(days.size(), events.size());
    for (int i = 0; i < days.size(); i++) {
      VEvent event = events.get(i);
      Map<String, Object> kept = kept(days.get(i));
      assertEquals(days.get(i).get("date"), date(event.getDateStart().getValue()).toString());
      assertEquals(
          date(event.getDateStart().getValue()).plusDays(1), date(event.getDateEnd().getValue()));
      assertFalse(event.getDateStart().getValue().hasTime(), "all day");
      assertTrue(event.getTransparency().isTransparent(), "keeps nobody busy");
      assertEquals(kept.get("colours"), event.getCategories().get(0).getValues());
      assertEquals(
          "%s (%s)".formatted(kept.get("name"), alternatives((List<?>) kept.get("colours"))),
          event.getSummary().getValue());
    }
  }

  /** What is left is the calendar of the country, which the API answers by name. */
  private static void removeTheDaysOfTheDiocese() {
    Asking.list("/api/propers").forEach(p -> delete("/api/propers/" + p.get("id")));
  }

  @Test
  void each_church_s_own_days_are_events_that_name_it() {
    List<String> own =
        events("/year/2027.ics").stream()
            .filter(YearFilesTest::isOfChurch)
            .map(e -> date(e.getDateStart().getValue()) + " " + e.getSummary().getValue())
            .filter(s -> s.contains("Sandreach"))
            .toList();

    // Saint Martin is a memorial elsewhere on 11 November; UNLY 59 I.4.
    assertEquals(
        List.of(
            "2027-09-19 Saint Martin, Sandreach: Anniversary of the Dedication of This Church (white)",
            "2027-11-11 Saint Martin, Sandreach: Saint Martin of Tours, Bishop (white)"),
        own);
  }

  @Test
  void what_else_is_offered_or_left_out_stands_in_the_description() {
    assertEquals(
        "And Chrism Mass (white).\nAnd Evening Mass of the Lord's Supper (white).\n"
            + "Moved to 5 April: The Annunciation of the Lord.",
        description("2027-03-25"));
    assertEquals(
        "Memorial.\nEvening: The Immaculate Conception of the Blessed Virgin Mary (white).",
        description("2026-12-07"));
    assertEquals("Solemnity.\nHoly day of obligation.", description("2026-12-08"));
    assertEquals("Left out: Saint Nicholas, Bishop.", description("2026-12-06"));
  }

  @Test
  void every_event_has_an_identity_of_its_own_and_the_file_is_the_same_again() {
    List<String> ids = events("/year/2027.ics").stream().map(e -> e.getUid().getValue()).toList();

    assertEquals(ids.size(), ids.stream().distinct().count());
    assertEquals(get("/year/2027.ics").asString(), get("/year/2027.ics").asString());
  }

  @Test
  void the_same_day_of_the_same_church_has_one_identity_in_every_file() {
    List<String> whole = events("/year/2027.ics").stream().map(e -> e.getUid().getValue()).toList();
    VEvent title =
        events("/year/2027.ics?church=sm").stream()
            .filter(e -> date(e.getDateStart().getValue()).equals(LocalDate.of(2027, 11, 11)))
            .findFirst()
            .orElseThrow();

    assertEquals("Saint Martin of Tours, Bishop (white)", title.getSummary().getValue());
    assertTrue(whole.contains(title.getUid().getValue()));
  }

  @Test
  void lines_end_and_are_folded_as_the_norm_asks_and_the_file_says_what_it_is() {
    String file =
        get("/year/2027.ics")
            .then()
            .statusCode(200)
            .header("Content-Type", equalTo("text/calendar;charset=UTF-8"))
            .header("Content-Disposition", containsString("filename=\"ordo-2027.ics\""))
            .extract()
            .asString();

    assertTrue(file.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\n"));
    assertTrue(file.endsWith("END:VCALENDAR\r\n"));
    assertEquals(0, file.replace("\r\n", "").chars().filter(c -> c == '\n' || c == '\r').count());
    Stream.of(file.split("\r\n"))
        .forEach(
            line -> assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= LONGEST_LINE, line));
  }

  @Test
  void the_table_has_a_line_for_every_day_as_the_api_answers_it() {
    removeTheDaysOfTheDiocese();
    List<CSVRecord> lines =
        lines("/year/2027.csv").stream().filter(l -> l.get("church").isEmpty()).toList();
    List<Map<String, Object>> days = Asking.list("/api/calendars/us/days?" + SPAN);

    assertEquals(days.size(), lines.size());
    for (int i = 0; i < days.size(); i++) {
      assertLine(days.get(i), lines.get(i));
    }
  }

  @Test
  void a_church_that_keeps_a_day_otherwise_has_a_line_of_its_own_below_it() {
    List<CSVRecord> lines = lines("/year/2027.csv");
    Map<String, Object> martin =
        Asking.only(Asking.list("/api/churches/sm/days?from=2027-11-11&to=2027-11-11"));

    List<CSVRecord> same = lines.stream().filter(l -> l.get("date").equals("2027-11-11")).toList();

    assertEquals(List.of("", "sm"), same.stream().map(l -> l.get("church")).toList());
    assertEquals("memorial", same.get(0).get("rank"));
    assertLine(martin, same.get(1));
  }

  @Test
  void one_church_s_table_has_that_church_s_days_alone() {
    List<CSVRecord> lines = lines("/year/2027.csv?church=sm");
    List<Map<String, Object>> days = Asking.list("/api/churches/sm/days?" + SPAN);

    assertEquals(days.size(), lines.size());
    for (int i = 0; i < days.size(); i++) {
      assertEquals("sm", lines.get(i).get("church"));
      assertLine(days.get(i), lines.get(i));
    }
  }

  @Test
  void the_table_says_what_it_is_and_ends_its_lines_as_the_norm_asks() {
    String file =
        get("/year/2027.csv?church=sm")
            .then()
            .statusCode(200)
            .header("Content-Type", equalTo("text/csv;charset=UTF-8"))
            .header("Content-Disposition", containsString("filename=\"ordo-2027-sm.csv\""))
            .extract()
            .asString();

    assertTrue(file.startsWith(String.join(",", OrdoTable.COLUMNS) + "\r\n"));
    assertEquals(0, file.replace("\r\n", "").chars().filter(c -> c == '\n' || c == '\r').count());
  }

  @Test
  void a_name_that_looks_like_a_formula_is_kept_as_text() {
    Sending.post(
            "/api/churches",
            Map.of(
                "slug",
                "evil",
                "name",
                "Evil",
                "titular",
                Map.of("name", "=HYPERLINK(\"x\")", "month", 7, "day", 7, "colour", "white")))
        .then()
        .statusCode(201);

    CSVRecord own =
        Asking.only(
            lines("/year/2027.csv").stream().filter(l -> l.get("church").equals("evil")).toList());

    assertEquals("2027-07-07", own.get("date"));
    assertEquals("'=HYPERLINK(\"x\")", own.get("name"));
  }

  @Test
  void names_come_in_the_language_of_the_cluster() {
    Sending.put("/api/settings", Map.of("name", "Valle", "languages", List.of("es")))
        .then()
        .statusCode(200);

    assertEquals("La Natividad del Señor", christmas("/year/2027.csv"));
    assertTrue(get("/year/2027.ics").asString().contains("SUMMARY;LANGUAGE=es:La Natividad"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/year/1970.ics",
        "/year/2301.csv",
        "/year/soon.ics",
        "/year/2027.ics?church=nowhere",
        "/year/2027.csv?church=nowhere",
        "/year/2027.pdf"
      })
  void what_is_not_there_is_told_with_a_problem_document(String address) {
    refusing.notThere(() -> get(address));
  }

  @Test
  void both_files_are_described() {
    String described = get("/q/openapi").asString();

    assertTrue(described.contains("/year/{year}.ics:"));
    assertTrue(described.contains("/year/{year}.csv:"));
    assertTrue(described.contains("The ordo of a liturgical year as iCalendar (RFC 5545)"));
  }

  private static void assertLine(Map<String, Object> day, CSVRecord line) {
    Map<String, Object> kept = kept(day);
    Map<?, ?> evening = (Map<?, ?>) day.get("evening");
    assertEquals(day.get("date"), line.get("date"));
    for (String same : List.of("season", "week", "sundayCycle", "weekdayCycle")) {
      assertEquals(String.valueOf(day.get(same)), line.get(same));
    }
    assertEquals(kept.get("id"), line.get("celebration"));
    for (String same : List.of("name", "rank", "precedence")) {
      assertEquals(String.valueOf(kept.get(same)), line.get(same));
    }
    assertEquals(bars((List<?>) kept.get("colours")), line.get("colours"));
    assertEquals((boolean) day.get("obligation") ? "yes" : "no", line.get("obligation"));
    assertEquals(evening.get("belongsTo"), line.get("evening"));
    List<String> offered = names((List<?>) day.get("celebrations"));
    assertEquals(bars(offered.subList(1, offered.size())), line.get("alsoOffered"));
    assertEquals(bars(names((List<?>) day.get("omitted"))), line.get("omitted"));
  }

  private static String christmas(String address) {
    return lines(address).stream()
        .filter(l -> l.get("date").equals("2026-12-25"))
        .findFirst()
        .orElseThrow()
        .get("name");
  }

  private static String description(String date) {
    return Asking.only(
            events("/year/2027.ics").stream()
                .filter(e -> !isOfChurch(e))
                .filter(e -> date(e.getDateStart().getValue()).equals(LocalDate.parse(date)))
                .toList())
        .getDescription()
        .getValue();
  }

  private static List<VEvent> events(String address) {
    ICalendar calendar = Biweekly.parse(get(address).asString()).first();
    assertEquals(List.of(), calendar.validate(calendar.getVersion()).getWarnings());
    return calendar.getEvents();
  }

  /** A church's own day carries the church in its identity. */
  private static boolean isOfChurch(VEvent event) {
    return event.getUid().getValue().indexOf('@') > "2027-11-11".length();
  }

  private static LocalDate date(Date date) {
    return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
  }

  private static List<CSVRecord> lines(String address) {
    CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    try {
      return format.parse(new StringReader(get(address).asString())).getRecords();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @SuppressWarnings("unchecked")
  private static Map<String, Object> kept(Map<String, Object> day) {
    return (Map<String, Object>) ((List<?>) day.get("celebrations")).get(0);
  }

  private static List<String> names(List<?> named) {
    return named.stream().map(n -> ((Map<?, ?>) n).get("name").toString()).toList();
  }

  private static String bars(List<?> values) {
    return String.join("|", values.stream().map(Object::toString).toList());
  }

  private static String alternatives(List<?> colours) {
    List<String> words = colours.stream().map(Object::toString).toList();
    return words.size() < 3
        ? String.join(" or ", words)
        : String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.get(2);
  }
}
