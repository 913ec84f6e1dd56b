package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** What one person changes is seen by another who has the page open. */
@WithPackagedServer
class OpenPagesTest {

  private static final LocalDate DAY = LocalDate.now(Scenario.ZONE).plusWeeks(6);

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void a_mass_entered_elsewhere_appears_on_the_open_week() {
    Page page = visit("/week/" + DAY);
    assertThat(page.locator("main")).not().containsText("06:41");
    page.evaluate("window.hereFromTheStart = true");

    enterMass("06:41");

    assertSoon(page.locator("main"), "06:41");
    assertEquals(true, page.evaluate("window.hereFromTheStart"), "the page was not loaded again");
    assertThat(page.locator("#newer")).isHidden();
  }

  @Test
  void whoever_is_in_the_middle_of_something_is_asked_first() {
    Page page = visit("/week/" + DAY);
    page.locator("main a").first().focus();

    enterMass("06:52");

    assertSoon(page.locator("#newer"), "Something on this page has changed meanwhile.");
    assertThat(page.locator("main")).not().containsText("06:52");
    assertEquals(List.of(), Axe.violations(page));
    page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Show it")).click();
    assertSoon(page.locator("main"), "06:52");
  }

  @Test
  void a_plan_that_one_person_applies_holds_on_the_page_of_the_other() {
    Page one = visit("/week/" + DAY.plusWeeks(1));
    press(one, "Plan this week");
    assertSoon(one.locator("main"), "Proven: nothing better exists.");
    Page other = open.browser().newContext().newPage();
    other.navigate(one.url());

    press(one, "Apply this plan");

    assertSoon(other.locator("main"), "This plan holds.");
  }

  private static Page visit(String path) {
    Page page = open.browser().newContext().newPage();
    Enter.demo(page, server, path);
    return page;
  }

  private static void enterMass(String time) {
    server.enter("/api/masses", Map.of("church", "sm", "start", DAY + "T" + time, "minutes", 30));
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
  }

  private static void assertSoon(Locator place, String text) {
    assertThat(place).containsText(text);
  }
}
