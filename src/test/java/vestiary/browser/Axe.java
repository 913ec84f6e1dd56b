package vestiary.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The rules of WCAG 2.2, levels A and AA, as far as a program can tell (axe-core, Deque Systems).
 *
 * <p>The library's own builder opens a second page to put together what each frame has, fetches
 * every sheet of styles anew, which our policy then refuses, and hands over each element that was
 * looked at; that takes five times as long as looking. None of these rules reads sheets of styles.
 */
final class Axe {

  private static final List<String> WCAG_2_2_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa");

  private static final String SCRIPT = script();

  /** In axe's words, with the first three elements; of what holds it gives no more than one. */
  private static final String LOOK =
      """
      async tags => {
        const found = await axe.run(document, {
          runOnly: { type: 'tag', values: tags },
          resultTypes: ['violations'],
          preload: false
        });
        if (found.passes.length === 0) return ['axe found nothing to look at'];
        return found.violations.map(one => one.id + ' (' + one.help + '): '
            + JSON.stringify(one.nodes.slice(0, 3).map(node => node.html)));
      }
      """;

  private Axe() {}

  /** What a page without frames breaks as it is shown now, each in a sentence. */
  @SuppressWarnings("unchecked")
  static List<String> violations(Page page) {
    if (page.frames().size() > 1) {
      throw new IllegalStateException(page.url() + " has frames, which are not looked into");
    }
    if (!(boolean) page.evaluate("typeof axe === 'object'")) {
      page.evaluate(SCRIPT);
    }
    return (List<String>) page.evaluate(LOOK, WCAG_2_2_AA);
  }

  private static String script() {
    try (InputStream file = AxeBuilder.class.getResourceAsStream("/axe.min.js")) {
      return new String(file.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
