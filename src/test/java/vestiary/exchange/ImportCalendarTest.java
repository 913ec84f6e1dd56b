package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ImportCalendarTest {

  private static final String SUNDAY =
      "UID:s@parish|SUMMARY:Sunday Mass|LOCATION:HT|DTSTART:20261206T103000|DTEND:20261206T113000|RRULE:FREQ=WEEKLY;COUNT=2|SEQUENCE:%d";
  private static final String WEDDING =
      "UID:w@parish|SUMMARY:Wedding in sa|DTSTART:20261205T140000|DURATION:PT45M|SEQUENCE:%d";
  private static final String MEETING =
      "UID:m@parish|SUMMARY:Parish council|LOCATION:HT|DTSTART:20261207T190000";

  @Inject Scenario scenario;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void what_would_come_is_shown_and_nothing_is_changed() {
    bringIn("true", SUNDAY.formatted(0), WEDDING.formatted(0), MEETING)
        .says(
            "Tried, nothing changed yet: three Masses can be brought in or changed.",
            "one event left out",
            "Its title names no Mass",
            "Saturday 5 December 2026, 14:00",
            "Wedding in sa (new)");

    assertEquals(List.of(), masses());
  }

  @Test
  void events_become_masses_of_their_church_kind_and_time() {
    bringIn("false", SUNDAY.formatted(0), WEDDING.formatted(0), MEETING)
        .says("Three Masses were brought in or changed.");

    assertEquals(
        List.of(
            "sa 2026-12-05T14:00 wedding 45",
            "ht 2026-12-06T10:30 of-the-day 60",
            "ht 2026-12-13T10:30 of-the-day 60"),
        masses());
  }

  @Test
  void the_same_file_again_changes_nothing_and_a_later_one_changes_that_mass() {
    bringIn("false", SUNDAY.formatted(0), WEDDING.formatted(0));
    List<String> before = masses();

    bringIn("false", SUNDAY.formatted(0), WEDDING.formatted(0))
        .says("three Masses as brought in before");
    assertEquals(before, masses());

    String later = WEDDING.formatted(1).replace("T140000", "T150000");
    bringIn("false", SUNDAY.formatted(0), later).says("One Mass was brought in or changed.");
    assertEquals("sa 2026-12-05T15:00 wedding 45", masses().get(0));
    assertEquals(before.size(), masses().size());

    bringIn("false", WEDDING.formatted(0)).says("one Mass as brought in before");
    assertEquals("sa 2026-12-05T15:00 wedding 45", masses().get(0));
  }

  @Test
  void what_its_calendar_cancels_is_cancelled() {
    bringIn("false", WEDDING.formatted(0));

    bringIn("false", WEDDING.formatted(1) + "|STATUS:CANCELLED");

    assertEquals(List.of(), masses());
  }

  @Test
  void an_import_of_a_calendar_is_undone_and_can_be_made_again() {
    bringIn("false", SUNDAY.formatted(0));
    String undo = Browsing.page("/import").action("/import/[-0-9a-f]+/undo");

    Browsing.press(undo).leadsTo(undo.replace("/undo", ""));
    assertEquals(List.of(), masses());

    bringIn("false", SUNDAY.formatted(0)).says("Two Masses were brought in or changed.");
  }

  @Test
  void one_church_may_be_chosen_for_all() {
    Page page =
        Browsing.goOn(
            sent(MEETING, "UID:x|SUMMARY:Holy Mass|LOCATION:The hall|DTSTART:20261208T190000"),
            span(Map.of("church", "sa", "dryRun", "false")));

    page.says("One Mass was brought in or changed.");
    assertTrue(masses().get(0).startsWith("sa 2026-12-08T19:00"));
  }

  @Test
  void dates_that_are_turned_round_or_too_far_apart_are_said_at_their_field() {
    String address = sent(WEDDING.formatted(0));

    Browsing.goOn(address, Map.of("from", "2026-12-31", "to", "2026-12-01"))
        .is(400)
        .faults("to", "The last date lies before the first.");
    Browsing.goOn(address, Map.of("from", "2026-12-01", "to", "2036-12-01"))
        .is(400)
        .faults("to", "Choose at most two years at a time.");
  }

  private static Page bringIn(String dryRun, String... events) {
    return Browsing.goOn(sent(events), span(Map.of("dryRun", dryRun))).is(200);
  }

  private static Map<String, String> span(Map<String, String> more) {
    Map<String, String> typed = new HashMap<>(more);
    typed.put("from", "2026-12-01");
    typed.put("to", "2026-12-31");
    return typed;
  }

  private static String sent(String... events) {
    return Browsing.sendList(ImportWords.CALENDAR, Ics.file(events)).wayOn();
  }

  private static List<String> masses() {
    return Asking.list("/api/masses?from=2026-12-01&to=2026-12-31").stream()
        .map(
            mass ->
                "%s %s %s %s"
                    .formatted(
                        mass.get("church"),
                        mass.get("start").toString().substring(0, 16),
                        mass.get("mass"),
                        mass.get("minutes")))
        .toList();
  }
}
