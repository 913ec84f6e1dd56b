package vestiary.pool;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class PoolTemplateTest {

  @Test
  void the_tally_gives_each_church_and_colour_and_adds_up() {
    RenderedPage page =
        RenderedPage.of("pool/pool", "pool", InventedPool.full(Invented.frame("vestments")));

    page.keepsTheHouseRules()
        .says("white 3, 1 away", "All 12 10 14 12 1 1 1 51")
        .says("HT-W4-C chasuble, gold also as white 128 cm, safe, precious. Does not leave this");
    assertTrue(page.html().contains("#chasuble-away"));
  }

  @Test
  void a_pool_without_vestments_says_so() {
    RenderedPage page =
        RenderedPage.of("pool/pool", "pool-empty", InventedPool.empty(Invented.frame("vestments")));

    page.keepsTheHouseRules()
        .says("No vestments are entered yet.")
        .keepsSilentOn("Chasubles, by church");
  }

  @Test
  void a_piece_shows_its_facts_and_its_care() {
    RenderedPage page =
        RenderedPage.of("pool/piece", "piece", InventedPool.known(Invented.frame("vestments")));

    page.keepsTheHouseRules()
        .says(
            "27 November to 11 December at the cleaner It is back",
            "3 to 20 May lining mended returned",
            "no washing and no dry cleaning; ask a textile conservator first");
    assertTrue(page.html().contains("name=\"serves\" value=\"white\" checked"));
  }

  @Test
  void a_refused_piece_keeps_what_was_typed_and_says_what_is_wrong_at_the_field() {
    RenderedPage page =
        RenderedPage.of(
            "pool/piece", "piece-refused", InventedPool.refused(Invented.frame("vestments")));

    page.keepsTheHouseRules().says("There is a piece HT-W1-C already, at Holy Trinity. Code");
    assertTrue(
        page.html().contains("value=\"HT-W1-C\" required aria-invalid=\"true\""), page.html());
    page.keepsSilentOn("Something is wrong with it", "Withdraw it from use");
  }
}
