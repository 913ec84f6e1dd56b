package vestiary.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.PlaywrightException;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * A browser without a window, driven by Playwright. Taken is the first that launches: the one named
 * in {@code VESTIARY_BROWSER} (or {@code -Dvestiary.browser}), or one that Playwright has installed
 * before, or one of the machine, or one from the npm registry ({@code npm} as the name asks for
 * that one alone). The tests are skipped where there is none, but fail where {@code CI} is true.
 */
final class OpenBrowser implements AutoCloseable {

  private static final String NONE =
      "No browser was found, so the browser tests did not run. Install Chromium or Chrome, or name one in VESTIARY_BROWSER.";

  /** In milliseconds, for whatever a page is to show: a busy machine with two cores is slow. */
  private static final double PATIENCE = 30_000;

  private final Playwright playwright;
  private final Browser browser;

  private OpenBrowser(Playwright playwright, Browser browser) {
    this.playwright = playwright;
    this.browser = browser;
  }

  static OpenBrowser open() {
    PlaywrightAssertions.setDefaultAssertionTimeout(PATIENCE);
    Playwright playwright =
        Playwright.create(
            new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    Optional<Browser> browser =
        ways(playwright).stream()
            .map(Supplier::get)
            .flatMap(List::stream)
            .map(launch -> find(playwright, launch))
            .flatMap(Optional::stream)
            .findFirst();
    if (browser.isEmpty()) {
      playwright.close();
      System.out.println(NONE);
      Assertions.assertNotEquals("true", System.getenv("CI"), NONE);
      Assumptions.abort(NONE);
    }
    return new OpenBrowser(playwright, browser.get());
  }

  Browser browser() {
    return browser;
  }

  @Override
  public void close() {
    playwright.close();
  }

  /** Later ways are looked at only if the earlier ones led to none: the last one downloads. */
  private static List<Supplier<List<Launch>>> ways(Playwright playwright) {
    Supplier<List<Launch>> npm = () -> BrowserFromNpm.find().stream().toList();
    String named =
        System.getProperty(
            "vestiary.browser", System.getenv().getOrDefault("VESTIARY_BROWSER", ""));
    if (named.equals("npm")) {
      return List.of(npm);
    }
    if (!named.isBlank()) {
      return List.of(() -> List.of(Launch.of("named in VESTIARY_BROWSER", Path.of(named))));
    }
    return List.of(() -> installed(playwright), BrowserOfTheMachine::all, npm);
  }

  private static List<Launch> installed(Playwright playwright) {
    return Stream.of(Path.of(playwright.chromium().executablePath()))
        .filter(Files::isExecutable)
        .map(path -> Launch.of("that Playwright installed", path))
        .toList();
  }

  private static Optional<Browser> find(Playwright playwright, Launch launch) {
    try {
      Browser browser = playwright.chromium().launch(options(launch));
      System.out.printf(
          "Browser %s, %s: %s%n", browser.version(), launch.how(), launch.executable());
      return Optional.of(browser);
    } catch (PlaywrightException e) {
      System.out.printf(
          "The browser %s does not start: %s%n",
          launch.executable(), e.getMessage().lines().findFirst().orElse(""));
      return Optional.empty();
    }
  }

  private static BrowserType.LaunchOptions options(Launch launch) {
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.putAll(launch.environment());
    return new BrowserType.LaunchOptions()
        .setExecutablePath(launch.executable())
        .setArgs(new ArrayList<>(launch.arguments()))
        .setEnv(environment);
  }
}
