package vestiary.movement;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.plan.RestingView;
import vestiary.plan.TripView;
import vestiary.web.Field;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;

class MovementTemplateTest {

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
          "says yes",
          "/movements/7");

  private static final List<Link> TURN = List.of(new Link("The week", "/week/2026-12-07"));

  @Test
  void journeys_stand_under_who_drives_them_and_owners_after_them() {
    RenderedPage.of(
            "movement/movements",
            "movements",
            new MovementsView(
                Invented.frame("week"),
                "7 to 13 December 2026",
                TURN,
                "One journey.",
                "/reservations?week=2026-12-07",
                List.of(new MovementsView.Driver("Father Ilverton", List.of(WITH_ILVERTON))),
                List.of(
                    new MovementsView.Dropped(
                        "Greta Holm: nothing is to be carried from Saint Anne to Saint Joseph any"
                            + " more.",
                        new Link("It was told", "/movements/8"))),
                List.of(
                    new MovementsView.Owner(
                        "Saint Anne",
                        "SA-W1, chasuble and stole for Mass at Holy Trinity. To be asked.",
                        new Link("Ask", "/consents/7/saint-anne"))),
                List.of(
                    new RestingView(
                        "HT-W1, chasuble and stole",
                        "Saint Anne",
                        "Holy Trinity",
                        "before Sunday 13 December, 07:30",
                        List.of("HT-W1-C", "HT-W1-S")))))
        .keepsTheHouseRules()
        .says(
            "Father Ilverton",
            "09:10",
            "SA-R1 and SA-R2, chasuble and stole",
            "says yes",
            "Not needed any more",
            "Owners who are asked first Saint Anne. SA-W1",
            "Still to be taken home",
            "HT-W1, chasuble and stole: from Saint Anne to Holy Trinity, by whom you like, before"
                + " Sunday 13 December, 07:30.");
  }

  @Test
  void whoever_is_asked_reads_what_where_and_when_and_has_two_buttons() {
    RenderedPage.of("movement/movement", "movement-asked", view(false, true, false))
        .keepsTheHouseRules()
        .says(
            "Holy Trinity to Saint Anne",
            "Leave by 17:46",
            "HT-W1 White chasuble and stole Holy Trinity: Vestment press, drawer 1",
            "Yes, I take it",
            "No, I cannot",
            "Take the asking back");
  }

  @Test
  void who_says_yes_may_say_that_it_is_there() {
    RenderedPage.of("movement/movement", "movement-accepted", view(false, false, true))
        .keepsTheHouseRules()
        .says("It is there", "I cannot after all");
  }

  @Test
  void while_nobody_is_asked_somebody_can_be() {
    RenderedPage.of("movement/movement", "movement-proposed", view(true, false, false))
        .keepsTheHouseRules()
        .says("Ask somebody", "Who is asked", "Mail address", "Asked before");
  }

  @Test
  void an_owner_has_two_buttons_as_well() {
    RenderedPage.of(
            "movement/consent",
            "consent",
            new ConsentView(
                Invented.frame("week"),
                "Saint Anne",
                "Mass at Holy Trinity on Saturday 12 December, 10:30",
                TURN,
                List.of("SA-R1 and SA-R2, chasuble and stole"),
                "The owner says no.",
                "",
                "/consents/7/saint-anne",
                1,
                new Link("What that would change", "/plans/7")))
        .keepsTheHouseRules()
        .says("Yes, it may go", "No, it stays", "What that would change");
  }

  private static MovementView view(boolean asking, boolean answering, boolean accepted) {
    return new MovementView(
        Invented.frame("week"),
        "Tuesday 8 December",
        "Holy Trinity to Saint Anne",
        TURN,
        "Greta Holm was asked on Monday 7 December, 10:42.",
        "",
        List.of(
            new MovementView.Fact("Leave by", "17:46"),
            new MovementView.Fact("Be there by", "18:00"),
            new MovementView.Fact("How", "A journey of its own, for the vestments alone.")),
        List.of(
            new MovementView.Label(
                "HT-W1",
                "White chasuble and stole",
                "Holy Trinity: Vestment press, drawer 1",
                "Owner: Holy Trinity; goes on asking.")),
        List.of("Each set hangs in its own garment bag, with its label on the hanger."),
        new MovementView.Doing(
            "/movements/7",
            asking,
            answering,
            accepted,
            !asking,
            "0",
            Field.of("Greta Holm"),
            Field.empty(),
            Field.empty(),
            true,
            List.of("Father Ilverton")),
        new MovementView.Riding("They are gone", ""),
        List.of(
            new MovementView.Told(
                "Father Ilverton said no on Monday 7 December, 09:15.",
                new Link("What that would change", "/plans/7"))));
  }
}
