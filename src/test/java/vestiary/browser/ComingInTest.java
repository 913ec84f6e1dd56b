package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.gson.JsonObject;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Scenario;

/** Coming in by a device, and with a form that was filled in before. */
@WithPackagedServer
class ComingInTest {

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void a_device_is_added_by_one_press_and_lets_its_user_in_by_another() {
    try (BrowserContext context = open.browser().newContext()) {
      Page page = context.newPage();
      holdAKey(context.newCDPSession(page));
      Enter.demo(page, server, "/account");
      page.getByLabel("What you call this device").fill("My phone");

      press(page, "Add this device");

      assertThat(page.locator("main")).containsText("This device lets you in from now on.");
      assertThat(page.locator("main")).containsText("My phone");
      assertEquals(List.of(), Axe.violations(page));
      press(page, "Sign out");
      assertThat(page).hasURL(server.address("/sign-in"));
      assertEquals(List.of(), Axe.violations(page));

      press(page, "Sign in with this device");

      assertThat(page).hasURL(server.address("/week"));
      assertThat(page.locator(".visitor")).containsText("Maren Dovecote");
    }
  }

  @Test
  void a_device_that_holds_no_key_is_told_what_to_do() {
    try (BrowserContext context = open.browser().newContext()) {
      Page page = context.newPage();
      page.navigate(server.address("/sign-in"));
      page.evaluate(
          "() => { navigator.credentials.get = () => Promise.reject(new DOMException('no')); }");

      press(page, "Sign in with this device");

      assertThat(page.locator("[data-passkey] .error"))
          .hasText("This did not work. Try again, or sign in with name and password.");
    }
  }

  @Test
  void without_a_script_no_device_is_offered() {
    try (BrowserContext context =
        open.browser().newContext(new Browser.NewContextOptions().setJavaScriptEnabled(false))) {
      Page page = context.newPage();

      page.navigate(server.address("/sign-in"));

      assertThat(page.locator("[data-passkey]")).isHidden();
    }
  }

  @Test
  void what_is_typed_while_a_session_ends_is_sent_after_coming_in_again() {
    LocalDate day = LocalDate.now(Scenario.ZONE).plusWeeks(5);
    try (BrowserContext context = open.browser().newContext()) {
      Page page = context.newPage();
      Enter.demo(page, server, "/vestments");
      page.navigate(server.address("/masses/new?church=sm&time=06:17&date=" + day));
      context.clearCookies();

      page.locator("main form button.first").click();

      assertThat(page.locator("main")).containsText("What you typed is kept.");
      assertEquals(List.of(), Axe.violations(page));
      press(page, "Enter as Maren Dovecote");
      assertThat(page.locator("h1")).hasText("You are signed in");
      assertEquals(List.of(), Axe.violations(page));
      press(page, "Send it now");
      assertThat(page).hasURL(Pattern.compile(".*/masses/.*saved.*"));
      page.navigate(server.address("/day/" + day));
      assertThat(page.locator("main")).containsText("06:17");
    }
  }

  /** The browser has a key of its own from then on, and its user is always there. */
  private static void holdAKey(CDPSession devtools) {
    JsonObject device = new JsonObject();
    device.addProperty("protocol", "ctap2");
    device.addProperty("transport", "internal");
    device.addProperty("hasResidentKey", true);
    device.addProperty("hasUserVerification", true);
    device.addProperty("isUserVerified", true);
    device.addProperty("automaticPresenceSimulation", true);
    JsonObject options = new JsonObject();
    options.add("options", device);
    devtools.send("WebAuthn.enable");
    devtools.send("WebAuthn.addVirtualAuthenticator", options);
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).first().click();
  }
}
