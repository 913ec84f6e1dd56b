package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** On the demo: one press plans the week that falls short, another mends it. */
@WithPackagedServer
class PlanTheWeekTest {

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void the_week_of_three_concelebrants_is_mended_by_one_press_and_the_journey_is_listed() {
    JsonNode clash = threeConcelebrants();
    String title = clash.get("sentence").asText().replaceAll("^[^:]*:\\d\\d: ([^.]*)\\..*", "$1");
    String day = clash.get("from").asText().substring(0, 10);
    Page page = open.browser().newContext().newPage();
    Enter.demo(page, server, "/week/" + day);
    assertThat(page.locator("main")).containsText(title);

    press(page, "Plan this week");
    assertThat(page.locator("main")).containsText("Proven: nothing better exists.");
    press(page, "Apply this plan");
    assertThat(page.locator("main")).containsText("This plan holds.");
    assertEquals(List.of(), Axe.violations(page));

    page.navigate(server.address("/week/" + day));
    assertThat(page.locator("main")).not().containsText(title);
    page.navigate(server.address("/movements?week=" + day));
    assertThat(
            page.locator(".trips")
                .filter(new Locator.FilterOptions().setHasText("Saint Anne"))
                .first())
        .isVisible();
  }

  @Test
  void without_a_script_the_plan_is_there_too() {
    Page page =
        open.browser()
            .newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false))
            .newPage();
    Enter.demo(page, server, "/week/" + LocalDate.now(Scenario.ZONE).plusWeeks(5));

    press(page, "Plan this week");

    assertThat(page.locator("main")).containsText("Plan: who wears what");
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
  }

  private static JsonNode threeConcelebrants() {
    LocalDate monday =
        LocalDate.now(Scenario.ZONE)
            .minusDays(LocalDate.now(Scenario.ZONE).getDayOfWeek().getValue() - 1);
    JsonNode clashes =
        server.read("/api/clashes?from=%s&to=%s".formatted(monday, monday.plusDays(13)));
    return StreamSupport.stream(clashes.spliterator(), false)
        .filter(c -> c.get("sentence").asText().contains("Three concelebrants need"))
        .findFirst()
        .orElseThrow();
  }
}
