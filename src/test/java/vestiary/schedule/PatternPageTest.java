package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.press;
import static vestiary.scenario.Browsing.send;
import static vestiary.scenario.Sending.delete;
import static vestiary.scenario.Sending.post;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;

/** Today is Monday 30 November 2026. */
@QuarkusTest
class PatternPageTest {

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_list_says_each_regular_mass_in_plain_words_under_its_church() {
    page("/patterns")
        .isHeaded("Regular Mass times")
        .says(
            "Sundays at 10:30",
            "Every other Saturday at 08:30",
            "First, third, fourth and fifth Thursdays of the month at 18:00",
            "Second Thursdays of the month at 18:00");
  }

  @Test
  void first_fridays_are_entered_with_ticks_and_stand_in_the_week() {
    Map<String, List<String>> form =
        new HashMap<>(page("/patterns/new?church=sa").form("/patterns"));
    form.putAll(
        Map.of(
            "time", List.of("19:00"),
            "weekday", List.of("FR"),
            "turn", List.of("1"),
            "starts", List.of("2026-12-01")));

    send("/patterns", form).leadsTo("/patterns?done=entered");

    page("/patterns").says("First Fridays of the month at 19:00, not in the Triduum");
    assertEquals("2026-12-04T19:00:00-06:00", Asking.mass("sa", "2026-12-04T19:00").get("start"));
  }

  @Test
  void the_next_dates_are_shown_while_it_is_typed() {
    open("/patterns/preview?church=sa&days=holy-days&time=19:00&minutes=60&starts=2026-12-01")
        .says(
            "Holy days of obligation at 19:00",
            "Tuesday 8 December 2026, 19:00",
            "The Immaculate Conception",
            "Friday 25 December 2026, 19:00");
    open("/patterns/preview?church=sa&days=weekdays&weekday=SU&seasons=advent&months=7&time=19:00&minutes=60&starts=2026-12-01")
        .says("These days never come together");
    open("/patterns/preview?church=&days=weekdays").says("Choose a church, days and an hour");
  }

  @Test
  void without_a_weekday_everything_typed_is_kept_and_the_reason_stands_beside_it() {
    Map<String, List<String>> form =
        new HashMap<>(page("/patterns/new?church=sa").form("/patterns"));
    form.put("time", List.of("19:00"));
    form.put("note", List.of("<b>Sung</b>"));

    Page page = refusing.unchanged(() -> send("/patterns", form));

    page.is(400).says("Tick at least one day of the week.").keeps(form, "/patterns");
  }

  @Test
  void a_change_shows_what_it_touches_and_is_done_once_that_was_looked_at() {
    Map<String, Object> mass = Asking.mass("ht", "2026-12-06T10:30");
    post("/api/reservations", Map.of("set", "HT-V1", "mass", mass.get("id")))
        .then()
        .statusCode(201);
    String address = "/patterns/" + sundays();
    Map<String, List<String>> form =
        new HashMap<>(page(address).form(address, Map.of("time", "11:00")));

    Page shown = refusing.unchanged(() -> send(address, form));

    shown
        .is(200)
        .isHeaded("Before it is saved")
        .says(
            "Sunday 6 December 2026, 10:30",
            "to 11:00",
            "set aside: HT-V1-C and HT-V1-S",
            "Named at these Masses, and to be told");

    send(address, shown.form(address)).leadsTo("/patterns?done=changed");
    assertEquals(mass.get("id"), Asking.mass("ht", "2026-12-06T11:00").get("id"));
  }

  @Test
  void there_is_a_way_back_from_each_step_that_changes_nothing() {
    String address = "/patterns/" + sundays();
    Page form = page(address).says("Leave it as it was");
    form.links("/patterns");
    page("/patterns/new").says("Leave it as it was").links("/patterns");
    page(address + "/removal").says("Leave it as it was").links(address);

    send(address, form.form(address, Map.of("time", "11:00")))
        .is(200)
        .says("Leave it as it was")
        .links(address);
  }

  @Test
  void what_has_changed_since_it_was_looked_at_is_shown_again_and_nothing_is_saved() {
    String address = "/patterns/" + sundays();
    Page shown = send(address, page(address).form(address, Map.of("time", "11:00")));
    Asking.change(Asking.mass("ht", "2026-12-06T10:30"), Map.of("note", "Choir"));

    Page again = refusing.unchanged(() -> send(address, shown.form(address)));

    again.is(200).says("Something has changed since you looked.", "stay as they are");
  }

  @Test
  void taking_off_shows_the_same_and_leaves_what_was_made_by_hand() {
    Asking.change(Asking.mass("ht", "2026-12-06T10:30"), Map.of("note", "Choir"));
    String address = "/patterns/%s/removal".formatted(sundays());

    Page shown = page(address).isHeaded("Before it is taken off").says("no longer said");
    send(address, shown.form(address)).leadsTo("/patterns?done=removed");

    assertEquals("Choir", Asking.mass("ht", "2026-12-06T10:30").get("note"));
    assertEquals(
        List.of(),
        Asking.masses("ht", "2026-12-20").stream()
            .filter(m -> m.get("start").toString().contains("T10:30"))
            .toList());
  }

  @Test
  void school_terms_come_and_go_and_mass_times_keep_to_them() {
    Map<String, List<String>> term =
        Map.of(
            "name", List.of("Winter"),
            "first", List.of("2027-01-06"),
            "last", List.of("2027-01-12"));
    send("/patterns/terms", term).leadsTo("/patterns/terms?done=kept");
    page("/patterns/terms").says("Winter", "6 to 12 January 2027");
    post(
            "/api/patterns",
            Map.of(
                "church",
                "sa",
                "rrule",
                "FREQ=WEEKLY;BYDAY=MO,WE",
                "starts",
                "2027-01-01",
                "time",
                "12:30",
                "school",
                "in-term"))
        .then()
        .statusCode(201);
    assertEquals(1, atHalfPastTwelve("2027-01-06").size());
    assertEquals(0, atHalfPastTwelve("2027-01-13").size());
    page("/patterns/terms").says("in school terms only");

    press(page("/patterns/terms").action("/patterns/terms/[^/]+/removal"))
        .leadsTo("/patterns/terms?done=removed");
    page("/patterns/terms").says("No term is entered yet.");
  }

  @Test
  void day_and_week_say_what_is_not_as_usual_and_where_to_go_instead() {
    Map<String, Object> other = Asking.mass("ht", "2026-12-06T10:30");
    Map<String, Object> usual = Asking.mass("sa", "2026-12-06T10:45");
    send(
            "/masses/%s/cancellation".formatted(usual.get("id")),
            Map.of("takenOverBy", List.of(other.get("id").toString())))
        .leadsTo("/masses/" + usual.get("id"));
    String sentence = "No Mass at 10:45; join us at Holy Trinity at 10:30.";

    page("/day/2026-12-06").says("Not as usual", sentence);
    page("/week/2026-12-06").says(sentence);
    page("/masses/" + usual.get("id")).says("This Mass is cancelled.", sentence);

    delete("/api/masses/" + other.get("id")).then().statusCode(204);
    page("/day/2026-12-06").says("No Mass at 10:45.", "No Mass at 10:30.");
  }

  @Test
  void a_moved_mass_says_so_and_goes_back_to_its_usual_hour_and_church() {
    Map<String, Object> usual = Asking.mass("sa", "2026-12-06T10:45");
    Asking.change(usual, Map.of("start", "2026-12-06T12:00", "church", "ht"));
    String address = "/masses/" + usual.get("id");
    page(address).says("Not at 10:45 but at 12:00 in Holy Trinity.");
    page("/day/2026-12-06").says("Not at 10:45 but at 12:00 in Holy Trinity.");

    press(address + "/return").leadsTo(address + "?saved=yes");

    assertEquals(usual.get("id"), Asking.mass("sa", "2026-12-06T10:45").get("id"));
    page("/day/2026-12-06").keepsSilentOn("Not as usual");
  }

  private static List<Map<String, Object>> atHalfPastTwelve(String date) {
    return Asking.masses("sa", date).stream()
        .filter(m -> m.get("start").toString().contains("T12:30"))
        .toList();
  }

  private static String sundays() {
    return Asking.list("/api/patterns").stream()
        .filter(p -> p.get("church").equals("ht"))
        .filter(p -> p.get("words").equals("Sundays at 10:30"))
        .map(p -> p.get("id").toString())
        .findFirst()
        .orElseThrow();
  }
}
