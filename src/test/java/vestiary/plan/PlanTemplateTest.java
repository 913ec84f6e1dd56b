package vestiary.plan;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.web.Invented.KNOW;
import static vestiary.web.Invented.MUST;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;

class PlanTemplateTest {

  private static final TripView WITH_ILVERTON =
      new TripView(
          "Tuesday 8 December",
          "09:10",
          "09:24",
          "Saint Anne",
          "Holy Trinity",
          "SA-R1 and SA-R2, chasuble and stole",
          "with Father Ilverton",
          "Free from Monday 7 December, 08:45.",
          "",
          "");

  @Test
  void a_plan_says_how_good_it_is_then_who_wears_what_and_why() {
    RenderedPage page =
        RenderedPage.of("plan/plan", "plan", view("Proven: nothing better exists.", false));

    page.keepsTheHouseRules()
        .says(
            "Proven: nothing better exists. Every need is met.",
            "Against the plan that holds, three sets move and two wearers change.",
            "Must be mended Sunday 13 December, 17:15, Our Lady of the Rosary. Tarnwick has no"
                + " white cope. See why",
            "HT-W1, chasuble and stole: from Saint Anne to Holy Trinity",
            "First concelebrant: SA-R1, chasuble and stole; from Saint Anne, with Father Ilverton,"
                + " leaves by 09:10 changed",
            "It comes along with Father Ilverton",
            "Saint Anne Tuesday 8 December, Mass at 18:30: HT-W2 instead of HT-W1 for Oakhallow.",
            "Apply this plan");
    assertFalse(page.html().contains("hx-get"), "a page that is done asks again");
  }

  @Test
  void a_plan_at_work_looks_again_by_itself_and_by_a_link() {
    RenderedPage page =
        RenderedPage.of("plan/plan", "plan-at-work", view("Being worked out.", true));

    page.keepsTheHouseRules().says("Look again", "Cancel, and keep the best so far");
    assertTrue(page.html().contains("hx-get=\"/plans/7\""));
  }

  @Test
  void a_sets_week_is_drawn_and_told() {
    SetWeekPicture.Drawing picture =
        SetWeekPicture.of(
            List.of("Mon 7", "Tue 8", "Wed 9", "Thu 10", "Fri 11", "Sat 12", "Sun 13"),
            List.of(
                new SetWeekPicture.Line(
                    "Holy Trinity",
                    "Tollbridge",
                    List.of(new SetWeekPicture.Lying(0, 2500)),
                    List.of(new SetWeekPicture.Stay(450, 540, Colour.WHITE, "08:00"))),
                new SetWeekPicture.Line(
                    "Saint Anne",
                    "Millferry",
                    List.of(new SetWeekPicture.Lying(2520, 10_080)),
                    List.of(new SetWeekPicture.Stay(2520, 2655, Colour.WHITE, "18:30")))),
            List.of(new SetWeekPicture.Way(0, 1, 2500, 2520, "17:46")));

    RenderedPage.of(
            "plan/set",
            "set-week",
            new SetWeekView(
                Invented.frame("vestments"),
                "White set of Holy Trinity",
                "HT-W1, 7 to 13 December 2026",
                List.of(new Link("The week", "/week/2026-12-07")),
                "Set out two times this week; carried once.",
                picture,
                List.of("Tuesday 8 December: carried from Holy Trinity.")))
        .keepsTheHouseRules()
        .says("Saint Anne", "18:30", "17:46", "Tuesday 8 December: carried from Holy Trinity.");
  }

  @Test
  void a_picture_follows_the_set_from_line_to_line() {
    SetWeekPicture.Drawing drawn =
        SetWeekPicture.of(
            List.of("a", "b", "c", "d", "e", "f", "g"),
            List.of(
                new SetWeekPicture.Line("One", "", List.of(), List.of()),
                new SetWeekPicture.Line("Two", "", List.of(), List.of())),
            List.of(new SetWeekPicture.Way(1, 0, 1440, 1500, "00:00")));

    SetWeekPicture.Slope slope = drawn.slopes().get(0);
    assertTrue(slope.y1() > slope.y2(), "it climbs from the lower line to the upper");
    assertTrue(slope.x1() < slope.x2(), "time runs to the right");
    assertTrue(Math.abs(slope.x1() - drawn.days().get(1).x()) < 0.1, "it leaves at midnight");
  }

  private static PlanView view(String status, boolean atWork) {
    return new PlanView(
        Invented.frame("week"),
        "7 to 13 December 2026",
        "/plans/7",
        List.of(new Link("The week", "/week/2026-12-07")),
        status,
        atWork,
        List.of("Every need is met.", "One carriage, 14 minutes on the road."),
        "Against the plan that holds, three sets move and two wearers change.",
        List.of(
            new PlanView.Changed(
                "Saint Anne",
                List.of(
                    "Tuesday 8 December, Mass at 18:30: HT-W2 instead of HT-W1 for Oakhallow.",
                    "Tuesday 8 December: one drive less, from Holy Trinity at 17:46."))),
        List.of(),
        "",
        new PlanView.Doing(
            atWork ? "" : "/plans/7/apply",
            "",
            atWork ? "/plans/7/cancel" : "",
            atWork ? "" : "/plans",
            "2026-12-07",
            "2026-12-13"),
        List.of(
            new PlanView.Lacking(
                MUST,
                "Sunday 13 December, 17:15, Our Lady of the Rosary",
                "Tarnwick has no white cope.",
                new Link("See why", "/clashes/7")),
            new PlanView.Lacking(
                KNOW,
                "Saturday 12 December, 10:30, Holy Trinity",
                "Second deacon: stole over the alb, without a dalmatic (GIRM 338).",
                new Link("", ""))),
        List.of(
            new PlanView.Church(
                "Holy Trinity",
                "Tollbridge",
                List.of(
                    new PlanView.Mass(
                        "Saturday 12 December",
                        "10:30",
                        "/masses/7",
                        Invented.ribbon("red"),
                        "Confirmation",
                        List.of(
                            new PlanView.Wear(
                                "First concelebrant",
                                "SA-R1, chasuble and stole",
                                new Link("Its week", "/vestments/sets/SA-R1/week/2026-12-07"),
                                "from Saint Anne, with Father Ilverton, leaves by 09:10",
                                "changed",
                                List.of(
                                    "It comes along with Father Ilverton, who drives from Saint"
                                        + " Anne that way anyway, so no journey is made for it."))))))),
        List.of(WITH_ILVERTON),
        List.of(
            new RestingView(
                "HT-W1, chasuble and stole",
                "Saint Anne",
                "Holy Trinity",
                "when somebody passes",
                List.of())));
  }
}
