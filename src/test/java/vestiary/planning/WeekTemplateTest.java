package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;
import vestiary.web.Standing;

class WeekTemplateTest {

  @Test
  void the_week_says_first_how_it_stands_and_proves_it_below() {
    RenderedPage page =
        RenderedPage.of("planning/week", "week", InventedWeek.of(Invented.frame("week")));

    page.keepsTheHouseRules()
        .says(
            "Nineteen Masses and three Benedictions. Four things must be mended, one is to be"
                + " decided.",
            "10:30 Bishop Fenwarden red, confirmation 5 concelebrants, 2 deacons two red short 2",
            "Friday violet or white Advent weekday or Optional memorial: Saint John Damascene");
  }

  @Test
  void a_demo_whose_fortnight_is_past_offers_to_move_it() {
    RenderedPage page =
        RenderedPage.of("planning/week", "week-demo", InventedWeek.of(Invented.pastDemo("week")));

    page.keepsTheHouseRules().says("Move the demo to this week");
  }

  @Test
  void a_church_that_keeps_its_own_day_says_so_in_its_cell() {
    RenderedPage page =
        RenderedPage.of(
            "planning/week", "week-crowded", InventedWeek.crowded(Invented.frame("week")));

    page.keepsTheHouseRules().says("Solemnity: Dedication white, in this church");
  }

  @Test
  void with_more_churches_than_fit_the_reader_chooses_which() {
    RenderedPage page =
        RenderedPage.of(
            "planning/week", "week-crowded", InventedWeek.crowded(Invented.frame("week")));

    page.says("Six of eight churches are shown. Choose which");
    assertTrue(page.html().contains("name=\"church\" value=\"ht\" checked"));
    assertTrue(page.html().contains("name=\"church\" value=\"mm\" >"));
  }

  @Test
  void a_cluster_without_churches_is_told_what_comes_first() {
    RenderedPage page =
        RenderedPage.of("planning/week", "week-empty", withoutChurches(Invented.frame("week")));

    page.keepsTheHouseRules()
        .says("Enter the first church, then its Masses and its vestments.")
        .keepsSilentOn("Petra Sancta");
  }

  private static WeekView withoutChurches(Frame frame) {
    return new WeekView(
        frame,
        "",
        "Advent, first week",
        "",
        "30 November to 6 December 2026",
        List.of(),
        new Link("Enter the first church", "/churches/new"),
        new WeekView.Plan("2026-11-30", "2026-12-06", List.of(), List.of()),
        new Standing("There is no church yet.", List.of()),
        WeekView.Choice.NONE,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        "Enter the first church, then its Masses and its vestments.");
  }
}
