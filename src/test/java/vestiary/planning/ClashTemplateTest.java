package vestiary.planning;

import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class ClashTemplateTest {

  @Test
  void a_shortage_states_its_count_and_lets_it_be_counted() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clash", "clash", InventedClash.shortage(Invented.frame("clashes")));

    page.keepsTheHouseRules()
        .says(
            "To decide · Saint Anne, Millferry · Tuesday 8 December, 18:30",
            "Three concelebrants need white; two white sets are there",
            "3 needed",
            "2 there",
            "Three needed, two there, one short.",
            "Thirteen, each counted once.",
            "What could be carried here",
            "What the norms allow");
  }

  @Test
  void each_way_out_says_what_it_costs_and_has_one_button_unless_it_is_advice() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clash", "clash-mendable", InventedClash.mendable(Invented.frame("clashes")));

    page.keepsTheHouseRules()
        .says(
            "What mends it, least trouble first",
            "Bring three matching white sets from Holy Trinity.",
            "One drive of 14 minutes by whoever goes.",
            "Advice: nothing to press.",
            "Who, if known")
        .keepsSilentOn("What could be carried here");
  }

  @Test
  void a_mended_clash_says_what_was_done_and_offers_to_undo_it() {
    RenderedPage page =
        RenderedPage.of(
            "planning/mended", "clash-mended", InventedClash.mended(Invented.frame("clashes")));

    page.keepsTheHouseRules()
        .says(
            "This stands no more.",
            "Done: Bring three matching white sets from Holy Trinity. 30 November 2026, 10:42",
            "Undo");
  }

  @Test
  void what_comes_too_late_is_shown_on_the_road() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clash", "clash-late", InventedClash.unreachable(Invented.frame("clashes")));

    page.keepsTheHouseRules().says("On the road", "due 10:00", "there at 10:11");
    page.keepsSilentOn("Count the two", "What could be carried here");
  }

  @Test
  void choices_that_follow_from_one_another_stand_in_a_table() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clash", "clash-forced", InventedClash.forced(Invented.frame("clashes")));

    page.keepsTheHouseRules()
        .says(
            "One choice after another",
            "2 Holy Trinity, 10:00 HT-R1 SA-R1 goes to Saint Anne, 10:30",
            "Three needed, two at most can be served, one short.");
    page.keepsSilentOn("Count the two", "In time");
  }

  @Test
  void the_list_leads_to_each_clash() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clashes", "clashes", InventedClash.list(Invented.frame("clashes")));

    page.keepsTheHouseRules()
        .says("Saturday 5 December", "Must be mended · Holy Trinity, Tollbridge");
  }

  @Test
  void a_span_without_a_clash_says_so() {
    RenderedPage page =
        RenderedPage.of(
            "planning/clashes", "clashes-none", InventedClash.none(Invented.frame("clashes")));

    page.keepsTheHouseRules().says("Nothing stands in the way.").keepsSilentOn("must be mended");
  }
}
