package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** Words that would be scripts on a careless page are typed into every field of every form. */
@WithPackagedServer
class HostileWordsTest {

  private static final String HOSTILE =
      "\"><script>window.broken=1</script><img src=x onerror=\"window.broken=1\">'{{7777*7777}}{7777*7777}";

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void whatever_is_typed_stays_words_on_every_page() {
    List<String> faults = new ArrayList<>();
    try (BrowserContext context = open.browser().newContext()) {
      Page page = context.newPage();
      page.onDialog(dialog -> faults.add("a dialog opened"));
      Enter.demo(page, server, "/week");
      for (String form :
          List.of(
              "/masses/new?church=ht&time=10:00&date=" + LocalDate.now(Scenario.ZONE).plusDays(30),
              "/vestments/new",
              "/vestments/HT-W1-C",
              "/vestments/HT-W1-C/value",
              "/care/HT-W1-C",
              "/inventories/sm",
              "/churches/new",
              "/churches/sa",
              "/propers/new",
              "/settings",
              "/users/new",
              "/settings/retention",
              "/devices/churches/sa",
              "/clusters/new",
              "/lendings/new",
              "/account",
              "/sign-in",
              "/import")) {
        send(page, form, faults);
      }
      for (String shown :
          List.of(
              "/week",
              "/day",
              "/vestments",
              "/care",
              "/inventories/ht",
              "/settings",
              "/propers",
              "/users",
              "/people",
              "/history")) {
        page.navigate(server.address(shown));
        look(page, shown, faults);
      }
    }

    assertEquals(List.of(), faults);
  }

  /** Each form of the page in turn, since sending one leads away. */
  private static void send(Page page, String address, List<String> faults) {
    page.navigate(server.address(address));
    int forms = page.locator("main form[method=post]").count();
    for (int i = 0; i < forms; i++) {
      page.navigate(server.address(address));
      Locator form = page.locator("main form[method=post]").nth(i);
      if (form.locator("input[type=text], textarea").count() > 0) {
        for (Locator field :
            form.locator("input[type=text], input[type=password], textarea").all()) {
          if (field.isVisible()) {
            field.fill(HOSTILE);
          }
        }
        // What the browser itself would refuse goes to the server too, as a hand-made form would.
        form.evaluate("form => form.noValidate = true");
        page.evaluate(
            "document.getElementById('main').insertAdjacentHTML('beforeend', '<i id=before></i>')");
        Locator chief = form.locator("button.first");
        (chief.count() > 0 ? chief : form.locator("button")).first().click();
        assertThat(page.locator("#before")).hasCount(0);
        page.waitForLoadState();
        look(page, address + " sent", faults);
      }
    }
  }

  private static void look(Page page, String where, List<String> faults) {
    if ((boolean) page.evaluate("window.broken !== undefined")) {
      faults.add(where + ": a script that was typed has run");
    }
    if (page.locator("img, script:not([src])").count() > 0) {
      faults.add(where + ": a tag that was typed is a tag of the page");
    }
    if (page.locator("main").textContent().contains("60481729")) {
      faults.add(where + ": what was typed was worked out");
    }
  }
}
