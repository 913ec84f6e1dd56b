package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** A Mass is entered in the browser, and the warning is there before anybody asks. */
@WithPackagedServer
class NewWarningTest {

  /** The demo's own Masses lie in the fortnight before. */
  private static final LocalDate AFTER_DEMO = LocalDate.now(Scenario.ZONE).plusDays(21);

  private static PackagedServer server;
  private static OpenBrowser open;

  private final List<String> complaints = new ArrayList<>();

  @AfterEach
  void nothing_was_refused_by_the_browser() {
    assertEquals(List.of(), complaints);
  }

  @Test
  void the_demo_warns_of_three_concelebrants_and_two_sets() {
    Page page = visit(true, "/week");

    assertThat(page.locator("main"))
        .containsText(Pattern.compile("Three concelebrants need (\\w+); two \\1 sets are there"));
  }

  @Test
  void a_new_mass_that_falls_short_is_warned_of_at_once_and_until_it_is_cancelled() {
    LocalDate day = whiteWeekdays().get(0);
    Page page = visit(true, "/masses/new");
    fill(page, day, "10:00", 60);

    press(page, "Save");

    assertThat(page.getByRole(AriaRole.STATUS))
        .containsText("The celebrant and three concelebrants need white; one white set is there");
    String mass = page.url().replaceAll("\\?.*", "");
    assertAccessible(page);

    page.navigate(server.address("/week/" + day));
    Locator notes = page.locator(".notes");
    assertThat(notes).containsText("Saint Martin");
    assertThat(notes).containsText("one white set is there");

    page.navigate(mass);
    press(page, "Cancel this Mass");
    assertThat(page.locator("main")).containsText("This Mass is cancelled.");

    page.navigate(server.address("/week/" + day));
    assertThat(page.locator("main")).not().containsText("one white set is there");
  }

  @Test
  void the_form_works_without_script() {
    LocalDate day = whiteWeekdays().get(1);
    Page page = visit(false, "/masses/new");
    fill(page, day, "10:00", 60);

    press(page, "Ask the calendar again");
    assertThat(page.locator(".calendar-says")).containsText("white");
    assertThat(page.getByLabel("Concelebrants", exactly())).hasValue("3");
    press(page, "Save");

    assertThat(page.getByRole(AriaRole.STATUS))
        .containsText("The celebrant and three concelebrants need white; one white set is there");

    press(page, "Cancel this Mass");
    assertThat(page.locator("main")).containsText("This Mass is cancelled.");
  }

  @Test
  void a_form_that_is_refused_keeps_what_was_typed() {
    LocalDate day = whiteWeekdays().get(2);
    Page page = visit(true, "/masses/new");
    fill(page, day, "10:00", 1800);
    page.getByLabel("Note for the sacristan").fill("Bring the large thurible");

    press(page, "Save");

    Locator minutes = page.getByLabel("Length in minutes");
    assertThat(minutes).hasValue("1800");
    assertThat(minutes).hasAttribute("aria-invalid", "true");
    assertThat(page.locator("#minutes-error")).containsText("360");
    assertThat(page.getByLabel("Church")).hasValue("sm");
    assertThat(page.getByLabel("Date")).hasValue(day.toString());
    assertThat(page.getByLabel("Time")).hasValue("10:00");
    assertThat(page.getByLabel("Concelebrants", exactly())).hasValue("3");
    assertThat(page.getByLabel("Note for the sacristan")).hasValue("Bring the large thurible");
    // The browser notes the refusal's status; we have read what it says.
    complaints.removeIf(complaint -> complaint.contains("status of 4"));
    assertAccessible(page);
  }

  @Test
  void the_colours_offered_follow_the_date() {
    LocalDate rose = roseSunday();
    Page page = visit(true, "/masses/new");
    page.getByLabel("Church").selectOption("ht");
    page.getByLabel("Time").fill("10:30");
    Locator roseChoice = page.locator("input[name=colour][value=rose]");

    page.getByLabel("Date").fill(rose.toString());
    assertThat(roseChoice).hasCount(1);
    assertThat(page.locator(".calendar-says")).containsText("rose");

    page.getByLabel("Date").fill(rose.plusDays(7).toString());
    assertThat(roseChoice).hasCount(0);

    page.getByLabel("Date").fill(rose.toString());
    assertThat(roseChoice).hasCount(1);
  }

  private void assertAccessible(Page page) {
    List<String> before = List.copyOf(complaints);
    assertEquals(List.of(), Axe.violations(page));
    complaints.retainAll(before);
  }

  private Page visit(boolean script, String path) {
    BrowserContext context =
        open.browser().newContext(new Browser.NewContextOptions().setJavaScriptEnabled(script));
    context.onConsoleMessage(
        message -> {
          if (message.type().equals("error")) {
            complaints.add(message.text());
          }
        });
    context.onWebError(error -> complaints.add(error.error()));
    Page page = context.newPage();
    Enter.demo(page, server, path);
    return page;
  }

  private static void fill(Page page, LocalDate day, String time, int minutes) {
    page.getByLabel("Church").selectOption("sm");
    page.getByLabel("Date").fill(day.toString());
    page.getByLabel("Time").fill(time);
    page.getByLabel("Length in minutes").fill(String.valueOf(minutes));
    page.getByLabel("Concelebrants", exactly()).fill("3");
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
  }

  private static Page.GetByLabelOptions exactly() {
    return new Page.GetByLabelOptions().setExact(true);
  }

  /** Saint Martin has one white set; on these days white is the day's own and only colour. */
  private static List<LocalDate> whiteWeekdays() {
    List<LocalDate> days =
        days("sm", AFTER_DEMO, 120)
            .filter(day -> colours(day).equals(List.of("white")))
            .map(NewWarningTest::date)
            .filter(date -> date.getDayOfWeek().compareTo(DayOfWeek.SATURDAY) < 0)
            .toList();
    assertTrue(days.size() >= 3, days.toString());
    return days;
  }

  private static LocalDate roseSunday() {
    return days("ht", LocalDate.now(Scenario.ZONE), 366)
        .filter(day -> colours(day).contains("rose"))
        .map(NewWarningTest::date)
        .findFirst()
        .orElseThrow();
  }

  private static Stream<JsonNode> days(String church, LocalDate first, int number) {
    JsonNode days =
        server.read(
            "/api/churches/%s/days?from=%s&to=%s"
                .formatted(church, first, first.plusDays(number - 1L)));
    return StreamSupport.stream(days.spliterator(), false);
  }

  private static List<String> colours(JsonNode day) {
    List<String> colours = new ArrayList<>();
    day.get("celebrations").get(0).get("colours").forEach(colour -> colours.add(colour.asText()));
    return colours;
  }

  private static LocalDate date(JsonNode day) {
    return LocalDate.parse(day.get("date").asText());
  }
}
