package vestiary.planning;

import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

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
}
