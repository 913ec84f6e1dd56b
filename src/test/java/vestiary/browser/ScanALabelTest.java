package vestiary.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.BoundingBox;
import com.microsoft.playwright.options.Media;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On the demo: a label is printed and read back; its scan sends a set out and takes it in. */
@WithPackagedServer
class ScanALabelTest {

  private static final int PHONE_WIDTH = 390;
  private static final int TALLEST_THUMB = 44;

  /** CSS Values and Units 3, 5.2: an inch is 96 px, and 25.4 mm. */
  private static final double MM = 96 / 25.4;

  private static PackagedServer server;
  private static OpenBrowser open;

  @Test
  void a_set_goes_out_and_comes_back_on_a_phone_and_its_history_tells_it() {
    Page page =
        open.browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setViewportSize(PHONE_WIDTH, 844)
                    .setJavaScriptEnabled(false))
            .newPage();
    Enter.demo(page, server, "/s");
    page.getByLabel("Or type the code").fill("sm-w1");
    press(page, "Open");
    assertThat(page.locator("h1")).hasText("Chasuble and stole");
    assertFits(page);

    page.getByText("Out, to another church").click();
    page.getByLabel("To which church").selectOption("sa");
    page.getByLabel("Who carries it").fill("Greta Holm");
    press(page, "Out it goes");

    assertThat(page.locator(".done")).containsText("Out, to Saint Anne");
    assertThat(page.locator("main")).containsText("carried by Greta Holm");
    assertFits(page);
    page.getByText("Next label").click();
    page.navigate(server.address("/s/SM-W1"));
    press(page, "Back, at Saint Martin");

    assertThat(page.locator(".done")).containsText("Back, at Saint Martin.");
    assertThat(page.locator("main")).containsText("Who had it before");
    assertThat(page.locator("main")).containsText("taken in by Maren Dovecote");
  }

  private static void press(Page page, String button) {
    page.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(button)).first().click();
  }

  private static void assertFits(Page page) {
    for (Locator press : page.locator("main .press").all()) {
      BoundingBox box = press.boundingBox();
      assertTrue(box.height >= TALLEST_THUMB, press.textContent() + " is " + box.height);
      assertTrue(box.x >= 0 && box.x + box.width <= PHONE_WIDTH, press.textContent());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "a4-21,       7.2,    15.15, 66,    38.1, 63.5,   38.1, 595.3, 841.9",
    "a4-21-whole, 0,      0.45,  70,    42.3, 70,     42.3, 595.3, 841.9",
    "letter-30,   4.7625, 12.7,  69.85, 25.4, 66.675, 25.4, 612,   792"
  })
  void labels_lie_where_the_sheet_has_them_and_are_read_back(
      String sheet,
      double left,
      double top,
      double across,
      double down,
      double width,
      double height,
      double paperWidth,
      double paperHeight)
      throws Exception {
    String address =
        server.address("/labels?sheet=%s&codes=HT-W1,SA-CP1,HT-RO1,SM-W1".formatted(sheet));
    Page page =
        open.browser()
            .newContext(
                new Browser.NewContextOptions().setDeviceScaleFactor(4).setViewportSize(900, 1200))
            .newPage();
    page.navigate(address);
    page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));

    BoundingBox paper = page.locator(".label-sheet").boundingBox();
    for (int place = 0; place < 4; place++) {
      BoundingBox label = page.locator(".label-edge").nth(place).boundingBox();
      assertEquals(left + place % 3 * across, (label.x - paper.x) / MM, 0.05, "from the left");
      assertEquals(top + place / 3 * down, (label.y - paper.y) / MM, 0.05, "from the top");
      assertEquals(width, label.width / MM, 0.05, "width");
      assertEquals(height, label.height / MM, 0.05, "height");
    }
    List<String> codes = List.of("HT-RO1", "HT-W1", "SA-CP1", "SM-W1");
    for (int place = 0; place < codes.size(); place++) {
      // One by one, as a phone does.
      assertEquals(
          List.of(
              "CODE-128:" + codes.get(place),
              "QR-Code:" + server.address("/s/" + codes.get(place))),
          CodeReader.read(page.locator(".label-edge").nth(place).screenshot()));
    }
    List<PrintedPages.Sheet> printed = PrintedPages.of(open.browser(), address).sheets();
    assertEquals(1, printed.size());
    assertEquals(paperWidth, printed.get(0).width(), 1);
    assertEquals(paperHeight, printed.get(0).height(), 1);
  }
}
