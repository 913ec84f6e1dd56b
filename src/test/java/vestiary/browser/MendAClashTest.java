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

/** On the demo, without a script: one press mends the want of a white set, another undoes it. */
@WithPackagedServer
class MendAClashTest {

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void the_jubilee_is_mended_by_one_press_the_journey_is_listed_and_undo_brings_it_back() {
    JsonNode clash = threeConcelebrants();
    String day = clash.get("from").asText().substring(0, 10);
    String journeys = server.address("/movements?week=" + day);
    Page page =
        open.browser()
            .newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false))
            .newPage();
    Enter.demo(page, server, "/day/" + day);
    page.locator("a[href*='%s#mends']".formatted(clash.get("id").asText())).click();
    assertThat(page.locator("main")).containsText("What mends it, least trouble first");

    page.locator(".remedy")
        .filter(new Locator.FilterOptions().setHasText("Bring three matching white sets"))
        .getByRole(AriaRole.BUTTON)
        .click();

    assertThat(page.locator("main")).containsText("This stands no more.");
    assertThat(page.locator(".deed")).containsText("Done: Bring three matching white sets");
    String mended = page.url();
    page.navigate(journeys);
    assertThat(page.locator(".trips")).containsText("HT-W1, HT-W2 and HT-W3");
    page.navigate(mended);

    press(page, "Undo");

    assertThat(page.locator("main")).containsText("What mends it, least trouble first");
    page.navigate(journeys);
    assertThat(page.locator("main")).containsText("Nothing is carried this week.");
  }

  @Test
  void its_page_can_be_used_by_everybody() {
    JsonNode clash = threeConcelebrants();
    String day = clash.get("from").asText().substring(0, 10);
    Page page = open.browser().newContext().newPage();

    Enter.demo(page, server, "/clashes/%s/%s".formatted(day, clash.get("id").asText()));

    assertThat(page.locator("main")).containsText("What mends it, least trouble first");
    assertEquals(List.of(), Axe.violations(page));
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).first().click();
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
