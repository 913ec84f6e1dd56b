package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** The demo's two clusters: what the one has is not here for the other, but for what is lent. */
@WithPackagedServer
class DemoOfTwoClustersTest {

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void whoever_belongs_to_one_finds_nothing_at_the_addresses_of_the_other() {
    LocalDate today = LocalDate.now(Scenario.ZONE);
    String mass =
        server
            .read("/api/masses?from=%s&to=%s".formatted(today, today.plusDays(6)))
            .get(0)
            .get("id")
            .asText();
    Page honor = enter("Honor Sandilow", "/vestments");
    assertThat(honor.locator(".head strong")).hasText("Ashmere Coast");
    assertThat(honor.locator("main")).containsText("SS-W1-C");

    for (String page :
        List.of(
            "/vestments/HT-W1-C",
            "/vestments/sets/HT-W1/week/" + today,
            "/churches/ht",
            "/masses/" + mass,
            "/masses/" + mass + "/vesture")) {
      assertEquals(404, honor.navigate(server.address(page)).status(), page);
      assertThat(honor.locator("main")).containsText("There is no");
      assertThat(honor.locator("body")).not().containsText("Wenlow");
    }
    for (String address :
        List.of("/api/pieces/HT-W1-C", "/api/churches/ht", "/api/masses/" + mass)) {
      assertEquals(404, honor.request().get(server.address(address)).status(), address);
    }
  }

  @Test
  void what_one_offers_the_other_takes_and_both_see_it() {
    Page maren = enter("Maren Dovecote", "/lendings");
    maren.locator("main .rows a").first().click();
    assertThat(maren.locator("main")).containsText("Ashmere Coast waits for your yes or no.");
    assertEquals(List.of(), Axe.violations(maren));
    maren.getByLabel("They are to lie at").selectOption("sa");
    press(maren, "Yes, we take them");
    assertThat(maren.locator("main")).containsText("You have them for these days");
    maren.navigate(server.address("/vestments?church=sa"));
    assertThat(maren.locator("main")).containsText("Borrowed from Ashmere Coast");

    Page honor = enter("Honor Sandilow", "/lendings");
    honor.locator("main .rows a").first().click();
    assertThat(honor.locator("main")).containsText("Wenlow Valley has them for these days");
    press(honor, "They are back");
    assertThat(honor.locator("main")).containsText("They are back with you.");
    maren.navigate(server.address("/vestments?church=sa"));
    assertThat(maren.locator("main")).not().containsText("Borrowed from");
  }

  private static Page enter(String name, String path) {
    Page page = open.browser().newContext().newPage();
    page.navigate(server.address("/sign-in?back=" + path));
    press(page, "Enter as " + name);
    return page;
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).click();
  }
}
