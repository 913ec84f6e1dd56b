package vestiary.ordo;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import vestiary.web.Invented;
import vestiary.web.RenderedPage;

class YearTemplateTest {

  @Test
  void the_year_says_of_each_day_colour_rank_and_what_else_a_sacristan_looks_for() {
    RenderedPage page =
        RenderedPage.of("ordo/year", "year", InventedYear.of(Invented.frame("year")));

    page.keepsTheHouseRules()
        .says(
            "violet or rose First Sunday of Advent Advent, first week Rose may be worn."
                + " Left out: San Sabas; San Nicolás.",
            "white or Optional memorial: San Juan Damasceno",
            "white Saint Martin, Sandreach: Solemnity: Dedication of This Church",
            "white evening: Solemnity: The Immaculate Conception",
            "Holy day of obligation",
            "Friday 4 December Solemnity: Dedication of This Church");
  }

  @Test
  void the_legend_explains_the_colours_and_speaks_of_no_clash() {
    RenderedPage.of("ordo/year", "year", InventedYear.of(Invented.frame("year")))
        .says("The hatching is heraldry’s", "Rank is set in type:")
        .keepsSilentOn("must be mended");
  }

  @Test
  void the_sheet_of_the_chosen_paper_is_linked_and_names_carry_their_language() {
    String html =
        RenderedPage.of("ordo/year", "year", InventedYear.of(Invented.frame("year"))).html();

    assertTrue(html.contains("href=\"/css/ordo-a5.css\" media=\"print\""));
    assertTrue(html.contains("<span class=\"rank-optional-memorial\" lang=\"es\">"));
    assertTrue(html.contains("id=\"day-2026-12-04\" aria-current=\"date\""));
  }

  @Test
  void a_church_s_ordo_says_whose_it_is() {
    RenderedPage.of("ordo/year", "year-church", InventedYear.ofChurch(Invented.frame("year")))
        .keepsTheHouseRules()
        .says("Saint Martin, Sandreach Sunday B, weekdays I The liturgical year 2027")
        .keepsSilentOn("Kept by");
  }
}
