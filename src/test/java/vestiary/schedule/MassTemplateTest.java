package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class MassTemplateTest {

  private static final List<String> FIELDS =
      List.of(
          "church",
          "date",
          "time",
          "minutes",
          "mass",
          "votiveOf",
          "celebration",
          "colour",
          "celebrant",
          "concelebrants",
          "deacons",
          "bringsPrincipal",
          "bringsConcelebrants",
          "bishop",
          "servers",
          "acolytes",
          "readers",
          "others",
          "serverSizes",
          "newPriests",
          "newDeacons",
          "alsoCope",
          "alsoVeil",
          "setOutMinutes",
          "note",
          "intention");

  @Test
  void a_saved_mass_says_at_once_what_falls_short() {
    RenderedPage page =
        RenderedPage.of("schedule/mass", "mass", InventedMass.saved(Invented.frame("week")));

    page.keepsTheHouseRules()
        .says(
            "Saved. This Mass now falls short: To decide. Five concelebrants need red; three red"
                + " sets are there. See why",
            "Cancel this Mass");
  }

  @Test
  void the_form_sends_every_fact_of_a_mass() {
    RenderedPage page =
        RenderedPage.of("schedule/mass", "mass", InventedMass.saved(Invented.frame("week")));

    for (String field : FIELDS) {
      assertTrue(page.html().contains(" name=\"" + field + "\""), field);
    }
  }

  @Test
  void what_is_not_permitted_is_not_offered_but_named_with_its_reason() {
    RenderedPage page =
        RenderedPage.of("schedule/mass", "mass", InventedMass.saved(Invented.frame("week")));

    page.says("Daily Mass for the dead: Not on weekdays of Advent from 17 December on. GIRM 381");
    assertFalse(page.html().contains(">Daily Mass for the dead</option>"));
  }

  @Test
  void a_refused_mass_keeps_what_was_typed() {
    RenderedPage page =
        RenderedPage.of(
            "schedule/mass", "mass-refused", InventedMass.refused(Invented.frame("week")));

    page.keepsTheHouseRules().says("is no time; write 10:30. Time");
    assertTrue(page.html().contains("value=\"half past ten\""));
  }

  @Test
  void the_choices_come_alone_for_a_page_that_asks_again() {
    String fragment =
        RenderedPage.fragment("schedule/choices", Map.of("choices", InventedMass.choices()));

    assertTrue(fragment.strip().startsWith("<div id=\"choices\""), fragment);
    assertFalse(fragment.contains("<main"));
  }
}
