package vestiary.browser;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.AxeResults;
import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Page;
import java.util.List;

/**
 * The rules of WCAG 2.2, levels A and AA, as far as a program can tell (axe-core, Deque Systems).
 * The console then holds what our own policy refuses to axe, which brings styles of its own.
 */
final class Axe {

  private static final List<String> WCAG_2_2_AA =
      List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa");

  private static final int EXAMPLES = 3;

  private Axe() {}

  /** What a page breaks, in axe's words, with the first elements that do. */
  static List<String> violations(Page page) {
    AxeResults results = new AxeBuilder(page).withTags(WCAG_2_2_AA).analyze();
    return results.getPasses().isEmpty()
        ? List.of("axe found nothing to look at")
        : results.getViolations().stream().map(Axe::words).toList();
  }

  private static String words(Rule rule) {
    List<String> examples =
        rule.getNodes().stream().limit(EXAMPLES).map(CheckedNode::getHtml).toList();
    return "%s (%s): %s".formatted(rule.getId(), rule.getHelp(), examples);
  }
}
