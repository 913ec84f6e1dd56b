package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import vestiary.scenario.Scenario;

/** Every page, on a desk's screen and on a phone's, in light and in dark, and the week on paper. */
@WithPackagedServer
class AccessibilityTest {

  private static final int DESK = 1440;

  /** The width in CSS pixels of a common phone held upright. */
  private static final int PHONE = 390;

  private static final int HEIGHT = 900;

  /** A4 (ISO 216), 297 by 210 millimetres, in the points of PDF, 72 to the inch. */
  private static final double A4_LONG = 841.9;

  private static final double A4_SHORT = 595.3;

  /** Axe leaves these alone (rule duplicate-id is off by itself; from memory). */
  private static final String DOUBLE_IDS =
      "[...document.querySelectorAll('[id]')].map(e => e.id)"
          + ".filter((id, place, all) => all.indexOf(id) !== place)";

  /**
   * Names that stand alone and are broken over lines: too narrow a column leaves letters of them.
   */
  private static final String BROKEN_WORDS =
      """
      (() => {
        const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
        const broken = [];
        while (texts.nextNode()) {
          const text = texts.currentNode;
          const word = text.data.trim();
          if (!/^\\p{L}{4,}$/u.test(word)
              || text.parentElement.closest('.unseen, option, script, style')) {
            continue;
          }
          const range = document.createRange();
          range.selectNodeContents(text);
          const lines = new Set([...range.getClientRects()].map(line => Math.round(line.top)));
          if (lines.size > 1) {
            broken.push(word);
          }
        }
        return broken;
      })()
      """;

  /** No colour depends on the width, and no width on the colours: each is looked at once. */
  private static final List<Look> LOOKS =
      List.of(new Look(DESK, ColorScheme.LIGHT), new Look(PHONE, ColorScheme.DARK));

  private static PackagedServer server;
  private static OpenBrowser open;

  /** Of somebody who has come in, and of somebody who has not. */
  private static BrowserContext entered;

  private static BrowserContext outside;

  @BeforeAll
  static void come_in() {
    entered = open.browser().newContext();
    outside = open.browser().newContext();
    try (Page page = entered.newPage()) {
      Enter.demo(page, server, "/week");
    }
  }

  record Sheet(String what, String address, int status, boolean entered) {
    static Sheet of(String what, String address) {
      return new Sheet(what, address, 200, true);
    }

    /** As it is shown to whoever has not come in. */
    static Sheet open(String what, String address) {
      return new Sheet(what, address, 200, false);
    }

    @Override
    public String toString() {
      return what;
    }
  }

  /** One way of looking at pages. */
  record Look(int width, ColorScheme scheme) {}

  static Stream<Sheet> every_page() {
    LocalDate nextWeek = LocalDate.now(Scenario.ZONE).plusWeeks(1);
    String mass =
        server
            .read("/api/masses?from=%s&to=%s".formatted(nextWeek, nextWeek.plusDays(6)))
            .get(0)
            .get("id")
            .asText();
    return Stream.of(
        Sheet.of("the week", "/week"),
        Sheet.of("the review of a week", "/review/" + nextWeek),
        Sheet.of("the week after", "/week/" + nextWeek),
        Sheet.of("the day", "/day"),
        Sheet.of("the year", "/year"),
        Sheet.of("the clashes", "/clashes"),
        Sheet.of("a clash", firstClash()),
        Sheet.of("a plan", plan(nextWeek)),
        Sheet.of("the journeys", "/movements?week=" + nextWeek),
        Sheet.of("a set's week", "/vestments/sets/HT-W1/week/" + nextWeek),
        Sheet.of("the vestments", "/vestments"),
        Sheet.of("a new piece", "/vestments/new"),
        Sheet.of("what a scan opens", "/s/HT-W1"),
        Sheet.of("a set whose pieces are apart", "/s/OL-D1"),
        Sheet.of("where a code is typed", "/s"),
        new Sheet("a label from elsewhere", "/s/NO-SUCH", 404, true),
        Sheet.of("how something goes", "/s/HT-W1/out"),
        Sheet.of("how something comes back", "/s/OL-D1/back"),
        Sheet.of("what is out", "/out"),
        Sheet.of("the loans", "/loans"),
        Sheet.of("labels", "/labels?church=sm"),
        Sheet.of("a piece", "/vestments/HT-W1-C"),
        Sheet.of("something wrong with a piece", "/care/HT-W2-C"),
        Sheet.of("a time in care", care()),
        Sheet.of("all in care", "/care"),
        Sheet.of("photographs", "/vestments/HT-W1-C/photos"),
        Sheet.of("what a piece is worth", "/vestments/HT-W4-C/value"),
        Sheet.of("the inventories", "/inventories"),
        Sheet.of("an inventory", "/inventories/pp"),
        Sheet.of("the stocktakes", "/stocktakes"),
        Sheet.of("a stocktake", stocktake()),
        Sheet.of("who celebrates where", "/celebrants/" + nextWeek),
        Sheet.of(
            "a proposal of celebrants",
            "/celebrants/proposal?from=%s&to=%s".formatted(nextWeek, nextWeek.plusDays(6))),
        Sheet.of("who could celebrate a Mass", "/masses/" + mass + "/celebrant"),
        Sheet.of("a new Mass", "/masses/new?date=" + nextWeek),
        Sheet.of("a Mass", "/masses/" + mass),
        Sheet.of(
            "an ordination", "/masses/new?church=ht&time=15:00&mass=ordination&date=" + nextWeek),
        Sheet.of("who serves at a Mass", "/masses/" + mass + "/serving"),
        Sheet.of("who wears what", "/masses/" + mass + "/vesture"),
        Sheet.of("the regular Mass times", "/patterns"),
        Sheet.of("a new Mass time", "/patterns/new?church=ht"),
        Sheet.of("a Mass time", "/patterns/" + pattern()),
        Sheet.of("what taking a Mass time off does", "/patterns/" + pattern() + "/removal"),
        Sheet.of("the school terms", "/patterns/terms"),
        Sheet.of("the parishes", "/parishes"),
        Sheet.of("the closing of a church", "/churches/sj/closing"),
        Sheet.of("the import", "/import"),
        Sheet.of("the columns of a list", list()),
        Sheet.of("the lists to take out", "/take-out"),
        Sheet.of("the backup", "/backup"),
        Sheet.of("the settings", "/settings"),
        Sheet.of("a new church", "/churches/new"),
        Sheet.of("a church", "/churches/sa"),
        Sheet.of("the days of your own", "/propers"),
        Sheet.of("a new day of your own", "/propers/new"),
        Sheet.of("a day of your own", "/propers/isidore-the-farmer"),
        Sheet.of("another date in one year", "/propers/new?for=one-year"),
        Sheet.of("the removal of a day", "/propers/isidore-the-farmer/removal"),
        Sheet.of("the set-up", "/setup"),
        Sheet.open("coming in", "/sign-in"),
        Sheet.open("a forgotten password", "/recovery"),
        Sheet.of("one's own account", "/account"),
        Sheet.of("one's own Masses and journeys", "/mine"),
        Sheet.of("who may come in", "/users"),
        Sheet.of("letting somebody in", "/users/new"),
        Sheet.of("the clusters", "/clusters"),
        Sheet.of("another cluster", "/clusters/new"),
        Sheet.of("what is lent", "/lendings"),
        Sheet.of("an offer", "/lendings/new"),
        Sheet.of("what another offers", "/lendings/" + lending()),
        Sheet.of("who changed what", "/history"),
        Sheet.of("the people", "/people"),
        Sheet.of("who is away", "/absences"),
        Sheet.of("a person", "/people/fintan-oakhallow"),
        Sheet.of("somebody new", "/people/new"),
        Sheet.of("when a visitor arrives", "/people/aldous-fenwarden/arrivals"),
        Sheet.of("when somebody is away", "/people/fintan-oakhallow/absences"),
        Sheet.of("removing somebody for good", "/people/silas-umberley/erasure"),
        Sheet.of("how long things are kept", "/settings/retention"),
        Sheet.of("the letters by mail", "/letters"),
        Sheet.of("one's own letters", "/letters/mine"),
        Sheet.of("the Mass times, to whoever publishes", "/times"),
        Sheet.open("the Mass times", "/times"),
        Sheet.open("the Mass times for the door", "/times/door?church=ht"),
        Sheet.of("the sheet for the bishop's office", "/masses/" + mass + "/office"),
        Sheet.of("the shared devices", "/devices"),
        Sheet.of("who acts on them", "/devices/churches/sa"),
        Sheet.open("a piece, to a visitor", "/vestments/HT-W1-C"),
        Sheet.open("a Mass, to a visitor", "/masses/" + mass),
        new Sheet("a page that is not there", "/nowhere", 404, false));
  }

  private static String lending() {
    return server.read("/api/lendings").get(0).get("id").asText();
  }

  private static String pattern() {
    return server.read("/api/patterns").get(0).get("id").asText();
  }

  @Test
  void the_next_masses_are_shown_while_a_mass_time_is_typed() {
    try (Page page = entered.newPage()) {
      page.setViewportSize(PHONE, HEIGHT);
      page.navigate(server.address("/patterns/new?church=sa"));

      page.getByLabel("Begins at").fill("19:00");
      page.getByLabel("Friday").check();
      page.getByLabel("First", new Page.GetByLabelOptions().setExact(true)).check();

      assertThat(page.locator("#preview"))
          .containsText("First Fridays of the month at 19:00, not in the Triduum");
      assertThat(page.locator("#preview li")).hasCount(8);
    }
  }

  @ParameterizedTest
  @MethodSource("every_page")
  void everybody_can_use_it(Sheet sheet) {
    List<String> faults = new ArrayList<>();
    try (Page page = (sheet.entered() ? entered : outside).newPage()) {
      List<String> complaints = complaints(page, sheet);
      show(page, LOOKS.get(0));
      Response response = page.navigate(server.address(sheet.address()));
      if (response.status() != sheet.status()) {
        faults.add("status " + response.status());
      }
      for (Look look : LOOKS) {
        show(page, look);
        faults(page, look, complaints).forEach(fault -> faults.add(look + ": " + fault));
        complaints.clear();
      }
    }

    assertEquals(List.of(), faults);
  }

  @Test
  void a_week_of_regular_masses_fits_one_sheet_of_a4_laid_across() {
    // Long after the demo's big liturgies, whose notes may need a second sheet in some weeks.
    LocalDate ordinary = LocalDate.now(Scenario.ZONE).plusWeeks(6);
    try (BrowserContext context = open.browser().newContext()) {
      Page page = context.newPage();
      page.navigate(server.address("/week/" + ordinary));

      String pdf =
          new String(
              page.pdf(new Page.PdfOptions().setPreferCSSPageSize(true)),
              StandardCharsets.ISO_8859_1);

      assertEquals(1, count("/Type\\s*/Page\\b", pdf));
      Matcher size = Pattern.compile("/MediaBox\\s*\\[0 0 ([\\d.]+) ([\\d.]+)]").matcher(pdf);
      assertTrue(size.find());
      assertEquals(A4_LONG, Double.parseDouble(size.group(1)), 1);
      assertEquals(A4_SHORT, Double.parseDouble(size.group(2)), 1);
    }
  }

  /** The server does not know how wide a screen is, or how dark: one loaded page does for both. */
  private static void show(Page page, Look look) {
    page.setViewportSize(look.width(), HEIGHT);
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(look.scheme()));
  }

  private static List<String> faults(Page page, Look look, List<String> complaints) {
    List<String> faults = new ArrayList<>();
    if ((int) page.evaluate("document.documentElement.scrollWidth") > look.width()) {
      faults.add("wider than the screen");
    }
    if (page.evaluate(DOUBLE_IDS) instanceof List<?> ids && !ids.isEmpty()) {
      faults.add("ids that stand twice, so that a label may miss its field: " + ids);
    }
    if (page.evaluate(BROKEN_WORDS) instanceof List<?> words && !words.isEmpty()) {
      faults.add("words broken into letters: " + words);
    }
    faults.addAll(complaints);
    faults.addAll(Axe.violations(page));
    return faults;
  }

  /** What the browser complains of while it loads, except the status that we look for ourselves. */
  private static List<String> complaints(Page page, Sheet sheet) {
    List<String> complaints = new ArrayList<>();
    page.onConsoleMessage(
        message -> {
          if (message.type().equals("error")
              && !message.text().contains("status of " + sheet.status())) {
            complaints.add(message.text());
          }
        });
    page.onPageError(complaints::add);
    return complaints;
  }

  private static String plan(LocalDate week) {
    String id =
        server
            .enter("/api/plans", Map.of("from", week.toString(), "to", week.plusDays(6).toString()))
            .get("id")
            .asText();
    server.read("/api/plans/%s?wait=30".formatted(id));
    server.enter("/api/plans/%s/apply".formatted(id), Map.of());
    return "/plans/" + id;
  }

  private static String care() {
    return "/care/SJ-R1-C/"
        + server
            .enter(
                "/api/pieces/SJ-R1-C/care",
                Map.of(
                    "from",
                    LocalDate.now(Scenario.ZONE).toString(),
                    "reason",
                    "Wine",
                    "kind",
                    "stain"))
            .get("id")
            .asText();
  }

  private static String stocktake() {
    String id = server.enter("/api/stocktakes", Map.of("church", "sm")).get("id").asText();
    return "/stocktakes/" + id;
  }

  /** The file waits for whoever sent it alone, so that the same person looks who sends. */
  private static String list() {
    try (Page page = entered.newPage()) {
      page.navigate(server.address("/import"));
      page.getByLabel("What is in it").selectOption("journeys");
      page.getByLabel("File")
          .setInputFiles(
              new FilePayload(
                  "list.csv",
                  "text/csv",
                  "From,To,Fahrzeit\nht,sa,14\n".getBytes(StandardCharsets.UTF_8)));
      page.getByText("Look at the file").click();
      page.waitForURL("**/import/*");
      return URI.create(page.url()).getPath();
    }
  }

  private static String firstClash() {
    Matcher link =
        Pattern.compile("href=\"(/clashes/\\d[^\"]+)\"").matcher(server.page("/clashes"));
    assertTrue(link.find());
    return link.group(1);
  }

  private static int count(String pattern, String text) {
    return (int) Pattern.compile(pattern).matcher(text).results().count();
  }
}
