package vestiary.planning;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class DayTemplateTest {

  @Test
  void the_day_gives_each_mass_its_colour_its_reason_and_what_stands_in_its_way() {
    RenderedPage page =
        RenderedPage.of("planning/day", "day", InventedDay.of(Invented.frame("day")));

    page.keepsTheHouseRules()
        .says(
            "Saturday of the first week of Advent",
            "Holy Trinity, Tollbridge red · confirmation, 46 to be confirmed To decide. Five need"
                + " red, three red sets are there. See why",
            "Bishop Fenwarden, five concelebrants, deacons Greywater and Pellmoor",
            "If violet were chosen, nothing would be short.",
            "The evening belongs to Sunday. UNLY 3.",
            "Saint Martin: Solemnity: Dedication of the church, white. Its own anniversary.",
            "It stands in number 4 of the table. UNLY 59 I.4.",
            "psalter week I");
  }

  @Test
  void the_picture_hatches_each_mass_in_its_colour() {
    RenderedPage page =
        RenderedPage.of("planning/day", "day", InventedDay.of(Invented.frame("day")));

    String picture = page.html().substring(page.html().indexOf("class=\"timetable\""));
    assertTrue(picture.contains("<path class=\"t-red\""));
    assertTrue(picture.contains("<path class=\"cut\""));
  }

  @Test
  void a_day_without_a_mass_says_so() {
    RenderedPage page =
        RenderedPage.of("planning/day", "day-empty", InventedDay.empty(Invented.frame("day")));

    page.keepsTheHouseRules().says("No Mass is entered for this day.").keepsSilentOn("Left out");
  }
}
