package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import com.microsoft.playwright.options.SelectOption;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/**
 * On the demo, on a phone and without a script: a list of another make is brought in and undone.
 */
@WithPackagedServer
class BringAListTest {

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void a_list_with_other_names_is_looked_at_tried_brought_in_and_undone() {
    LocalDate day = LocalDate.now(Scenario.ZONE).plusWeeks(3);
    String date = "%d.%d.%d".formatted(day.getDayOfMonth(), day.getMonthValue(), day.getYear());
    Page page =
        open.browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setJavaScriptEnabled(false)
                    .setViewportSize(390, 844))
            .newPage();
    Enter.demo(page, server, "/import");
    page.getByLabel("What is in it").selectOption(new SelectOption().setLabel("Masses"));
    page.getByLabel("File")
        .setInputFiles(
            new FilePayload(
                "messen.csv",
                "text/csv",
                ("Bemerkung;Kirche;Datum;Uhrzeit\r\nChor;Holy Trinity;%s;21.45 Uhr\r\n"
                        .formatted(date))
                    .getBytes(StandardCharsets.UTF_8)));

    press(page, "Look at the file");
    assertThat(page.locator("#column-church")).hasValue("1");
    assertThat(page.locator("#column-date")).hasValue("2");
    assertThat(page.locator("#column-time")).hasValue("3");
    page.locator("#same-minutes").fill("45");
    press(page, "Try it first");
    assertThat(page.locator("main")).containsText("one line can be brought in");
    assertEquals(0, late(day));
    press(page, "Import");
    assertThat(page.locator("main")).containsText("One line was brought in.");
    assertEquals(1, late(day));
    press(page, "Undo this import");
    assertThat(page.locator("main")).containsText("It was undone");
    assertEquals(0, late(day));
  }

  private static int late(LocalDate day) {
    return (int)
        server
            .read("/api/masses?from=%s&to=%s".formatted(day, day))
            .findValuesAsText("start")
            .stream()
            .filter(start -> start.contains("T21:45"))
            .count();
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button).setExact(true))
        .click();
  }
}
