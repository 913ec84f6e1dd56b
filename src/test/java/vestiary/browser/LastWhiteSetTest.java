package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** Two sacristans, each with a phone, want the same white set for the same hour. */
@WithPackagedServer
class LastWhiteSetTest {

  /** The demo's own Masses lie in the fortnight before. */
  private static final LocalDate DAY = LocalDate.now(Scenario.ZONE).plusDays(25);

  private static final int PHONE = 390;

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void one_gets_it_and_the_other_reads_who_has_it_until_when_and_what_is_nearest() {
    String atTrinity = mass("ht");
    String atAnne = mass("sa");
    Page first = confirming(atTrinity, "HT-W1");
    Page second = confirming(atAnne, "HT-W1");

    press(first, "Set them aside");
    assertThat(first.getByRole(AriaRole.STATUS))
        .containsText("HT-W1 is set aside for Mass at Holy Trinity");
    press(second, "Set them aside");

    assertThat(second.getByRole(AriaRole.ALERT))
        .containsText("HT-W1 is held by Maren Dovecote for Mass at Holy Trinity, 15:00, until ");
    assertThat(second.getByRole(AriaRole.ALERT)).containsText("Free instead: SA-W1 (lies here)");
    for (Page page : List.of(first, second)) {
      assertEquals(
          PHONE, page.evaluate("document.documentElement.scrollWidth"), "wider than the phone");
      assertEquals(List.of(), Axe.violations(page));
    }

    press(first, "Give it up again");
    assertThat(first.getByRole(AriaRole.STATUS)).containsText("HT-W1 is given up");
    press(first, "Set it aside again");
    assertThat(first.getByRole(AriaRole.STATUS)).containsText("HT-W1 is set aside");
  }

  private static String mass(String church) {
    return server
        .enter("/api/masses", Map.of("church", church, "start", DAY + "T15:00", "colour", "white"))
        .get("id")
        .asText();
  }

  private static Page confirming(String mass, String set) {
    Page page =
        open.browser()
            .newContext(new Browser.NewContextOptions().setViewportSize(PHONE, 844))
            .newPage();
    Enter.demo(page, server, "/masses/" + mass);
    page.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName("Set vestments aside"))
        .click();
    page.locator("input[value='%s']".formatted(set)).check();
    press(page, "See what that takes, then set aside");
    assertThat(page.locator("h1")).hasText("Set these aside?");
    return page;
  }

  private static void press(Page page, String name) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name)).click();
  }
}
