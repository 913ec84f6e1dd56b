package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.Route;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** On a phone in a sacristy with thick walls: what was typed is not lost, and is sent once. */
@WithPackagedServer
class UnsentFormTest {

  private static final String UNSENT =
      "Not sent yet: no connection. It is kept on this phone and is sent when the connection is"
          + " back.";
  private static final LocalDate DAY = LocalDate.now(Scenario.ZONE).plusDays(40);

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void without_a_connection_the_form_stays_says_so_outlives_the_page_and_is_sent_once() {
    try (BrowserContext phone = phone()) {
      Page page = phone.newPage();
      Enter.demo(page, server, "/masses/new?date=" + DAY);
      fill(page, "04:10", "Bring the large thurible");

      phone.setOffline(true);
      save(page);

      assertThat(page.locator("#unsent")).containsText(UNSENT);
      assertThat(page.locator("#note")).hasValue("Bring the large thurible");
      assertThrows(PlaywrightException.class, page::reload);
      phone.setOffline(false);
      page.navigate(server.address("/week"));

      // The first try may come before the network does; the next follow after 3 and 6 seconds.
      assertThat(page.locator("#unsent")).containsText("Sent now: what you typed at");
      page.locator("#unsent a").click();
      assertThat(page.locator("#note")).hasValue("Bring the large thurible");
      assertEquals(1, masses("04:10"));
      page.navigate(server.address("/week"));
      assertThat(page.locator("#unsent")).hasCount(0);
    }
  }

  @Test
  void where_the_answer_alone_is_lost_it_is_sent_again_and_entered_once() {
    try (BrowserContext phone = phone()) {
      Page page = phone.newPage();
      Enter.demo(page, server, "/masses/new?date=" + DAY);
      fill(page, "04:20", "");
      AtomicInteger sent =
          atFirst(
              page,
              route -> {
                fetch(route);
                route.abort();
              });

      save(page);

      assertThat(page.locator("#unsent")).containsText(UNSENT);
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Try now")).click();
      assertThat(page.locator("main")).containsText("Saved.");
      assertEquals(2, sent.get());
      assertEquals(1, masses("04:20"));
    }
  }

  @Test
  void whoever_turns_to_another_page_before_the_answer_is_there_hears_of_it_on_that_one() {
    try (BrowserContext phone = phone()) {
      Page page = phone.newPage();
      Enter.demo(page, server, "/masses/new?date=" + DAY);
      fill(page, "04:30", "");
      AtomicInteger sent = atFirst(page, UnsentFormTest::fetch);

      save(page);
      page.waitForCondition(() -> masses("04:30") == 1);
      page.navigate(server.address("/week"));

      assertThat(page.locator("#unsent")).containsText("Sent now: what you typed at");
      assertEquals(2, sent.get());
      assertEquals(1, masses("04:30"));
    }
  }

  @Test
  void while_the_server_is_at_work_on_it_nobody_is_told_that_there_is_no_connection() {
    try (BrowserContext phone = phone()) {
      Page page = phone.newPage();
      Enter.demo(page, server, "/masses/new?date=" + DAY);
      fill(page, "04:40", "");
      AtomicInteger sent = new AtomicInteger();
      page.route(
          "**/masses",
          route -> {
            if (sent.incrementAndGet() == 1) {
              route.fulfill(
                  new Route.FulfillOptions().setStatus(409).setHeaders(Map.of("Retry-After", "3")));
            } else {
              route.resume();
            }
          });

      save(page);

      assertThat(page.locator("#unsent")).containsText("The server has it and is still at work");
      page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Ask now")).click();
      assertThat(page.locator("main")).containsText("Saved.");
      assertEquals(1, masses("04:40"));
    }
  }

  /** Does that with what is sent first, and lets the rest go on; counts both. */
  private static AtomicInteger atFirst(Page page, Consumer<Route> deed) {
    AtomicInteger sent = new AtomicInteger();
    page.route(
        "**/masses",
        route -> {
          if (sent.incrementAndGet() == 1) {
            deed.accept(route);
          } else {
            route.resume();
          }
        });
    return sent;
  }

  /** Lets the server do it, and keeps the answer from the page. */
  private static void fetch(Route route) {
    route.fetch(new Route.FetchOptions().setMaxRedirects(0));
  }

  private static BrowserContext phone() {
    return open.browser().newContext(new Browser.NewContextOptions().setViewportSize(390, 844));
  }

  private static void fill(Page page, String time, String note) {
    page.locator("#church").selectOption("ht");
    page.locator("#date").fill(DAY.toString());
    page.locator("#time").fill(time);
    page.locator("#minutes").fill("30");
    page.locator("#note").fill(note);
  }

  private static void save(Page page) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName("Save")).click();
  }

  private static long masses(String time) {
    JsonNode masses = server.read("/api/masses?from=%s&to=%s&church=ht".formatted(DAY, DAY));
    return StreamSupport.stream(masses.spliterator(), false)
        .filter(mass -> mass.get("start").asText().contains("T" + time))
        .count();
  }
}
