package vestiary.schedule;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** The dates on which a Mass time is not kept, as they are typed. Today is 30 November 2026. */
@QuarkusTest
class PatternDatesPageTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "24 December 2026, 31.12.2026",
        "24/12/2026 and 31/12/2026",
        "24 de diciembre de 2026 y 31 de diciembre de 2026",
        "2026-12-24, 2026-12-31"
      })
  void dates_are_understood_as_people_write_them(String typed) {
    send("/patterns", thursdays(typed)).leadsTo("/patterns?done=entered");

    assertEquals(List.of("2026-12-24", "2026-12-31"), entered().get("except"));
  }

  @Test
  void what_is_kept_is_shown_in_words_and_can_be_sent_again() {
    send("/patterns", thursdays("2026-12-24, 2026-12-31")).leadsTo("/patterns?done=entered");
    String address = "/patterns/" + entered().get("id");

    Map<String, List<String>> form = page(address).form(address, Map.of("note", "Choir"));
    assertEquals(List.of("24 December 2026, 31 December 2026"), form.get("except"));
    Page shown = send(address, form).is(200).isHeaded("Before it is saved");
    send(address, shown.form(address)).leadsTo("/patterns?done=changed");

    assertEquals(List.of("2026-12-24", "2026-12-31"), entered().get("except"));
    assertEquals("Choir", entered().get("note"));
  }

  @Test
  void what_can_be_read_both_ways_is_refused_beside_its_field_and_all_typed_is_kept() {
    Map<String, List<String>> form = thursdays("8/12/2026, 24 December 2026");

    Page page = refusing.unchanged(() -> send("/patterns", form));

    page.is(400)
        .faults(
            "except",
            "\"8/12/2026\" can be read as 8 December 2026 or as 12 August 2026; write the month as"
                + " a word, or year, month and day as in 2026-12-08.")
        .keeps(form, "/patterns");
  }

  @Test
  void the_preview_leaves_them_out_and_names_what_is_no_date() {
    String asked =
        "/patterns/preview?church=sa&days=weekdays&weekday=TH&time=19:00&minutes=60"
            + "&starts=2026-12-01&except=";

    open(asked + "24 December 2026")
        .says("not on 24 December 2026", "31 December 2026, 19:00")
        .keepsSilentOn("Thursday 24 December 2026, 19:00");
    open(asked + "soon").says("\"soon\" is no date; write it as 24 December 2026");
  }

  @Test
  void spanish_is_spoken_and_read_too() {
    send("/patterns", thursdays("24 de diciembre de 2026")).leadsTo("/patterns?done=entered");
    String address = "/patterns/" + entered().get("id");

    Page page = in_spanish(address).says("Separadas por comas: 24 de diciembre de 2026");
    assertEquals(List.of("24 de diciembre de 2026"), page.form(address).get("except"));
    in_spanish(
            "/patterns/preview?church=sa&days=weekdays&weekday=TH&time=19:00&starts=2026-12-01"
                + "&except=pronto,8/12/2026")
        .says(
            "\"8/12/2026\" puede leerse como 8 de diciembre de 2026 o como 12 de agosto de 2026;",
            "\"pronto\" no es una fecha; escríbala como 24 de diciembre de 2026");
  }

  @Test
  void programs_still_write_year_month_and_day() {
    refusing.unfit(
        () ->
            post(
                "/api/patterns",
                Map.of(
                    "church", "sa",
                    "rrule", "FREQ=WEEKLY;BYDAY=TH",
                    "starts", "2026-12-01",
                    "time", "19:00",
                    "except", List.of("24 December 2026"))),
        "except");
  }

  private static Map<String, List<String>> thursdays(String except) {
    Map<String, List<String>> form =
        new HashMap<>(page("/patterns/new?church=sa").form("/patterns"));
    form.putAll(
        Map.of(
            "time", List.of("19:00"),
            "weekday", List.of("TH"),
            "starts", List.of("2026-12-01"),
            "except", List.of(except)));
    return form;
  }

  private static Map<String, Object> entered() {
    return Asking.list("/api/patterns").stream()
        .filter(p -> p.get("church").equals("sa") && p.get("time").equals("19:00"))
        .findFirst()
        .orElseThrow();
  }

  private static Page in_spanish(String address) {
    return Page.of(
        given().header("Accept-Language", "es").accept("text/html").get(address).asString());
  }
}
