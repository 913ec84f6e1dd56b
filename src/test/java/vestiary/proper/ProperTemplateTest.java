package vestiary.proper;

import static vestiary.web.InventedForm.choice;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.web.Celebrated;
import vestiary.web.Choice;
import vestiary.web.Field;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;

class ProperTemplateTest {

  private static final Link BACK = new Link("All days of your own", "/propers");

  @Test
  void the_list_says_of_each_day_its_rank_its_colour_and_what_becomes_of_it() {
    PropersView.Row row =
        new PropersView.Row(
            "our-lady-of-the-ford",
            "19 August",
            new Celebrated("", "feast", "", "Our Lady of the Ford"),
            List.of(Invented.ribbon("white")),
            "principal patron of the diocese: feast",
            List.of("All churches"),
            List.of("Kept on Thursday 19 August 2027."),
            new Link("Change", "/propers/our-lady-of-the-ford"));

    RenderedPage.of(
            "proper/propers", "propers", list(new PropersView.Part("Every year", List.of(row))))
        .keepsTheHouseRules()
        .says(
            "19 August Our Lady of the Ford white, principal patron of the diocese: feast",
            "Kept on Thursday 19 August 2027.",
            "All churches",
            "Saved.");
  }

  @Test
  void a_list_without_a_day_offers_to_add_one() {
    RenderedPage.of("proper/propers", "propers-empty", list())
        .keepsTheHouseRules()
        .says("Add a day", "Another date in one year")
        .keepsSilentOn("Every year");
  }

  @Test
  void the_form_asks_for_a_day_of_every_year() {
    RenderedPage.of("proper/proper", "proper", form(false, "/propers/x/removal"))
        .keepsTheHouseRules()
        .says(
            "The ordo of your diocese decides; enter what it has.",
            "Name, where the calendar has none",
            "Taken to a Sunday",
            "Only in",
            "If it is kept no longer");
  }

  @Test
  void the_form_of_one_year_asks_for_celebration_date_and_churches_alone() {
    RenderedPage.of("proper/proper", "proper-of-one-year", form(true, ""))
        .keepsTheHouseRules()
        .says("Kept on", "Only in")
        .keepsSilentOn("Taken to a Sunday", "What it is", "If it is kept no longer");
  }

  @Test
  void the_question_names_the_day_and_both_answers() {
    RemovalView view =
        new RemovalView(
            Invented.frame("settings"),
            "Remove Our Lady of the Ford?",
            "",
            List.of("All churches then keep its day as the calendar has it."),
            "/propers/x/removal",
            new Link("No, leave it", "/propers/x"),
            "3");

    RenderedPage.of("proper/removal", "proper-removal", view)
        .keepsTheHouseRules()
        .says("Remove Our Lady of the Ford?", "Yes, remove it No, leave it");
  }

  private static PropersView list(PropersView.Part... parts) {
    return new PropersView(
        Invented.frame("settings"),
        "One day is kept beside the calendar of the United States, or otherwise than there.",
        "Saved.",
        List.of(new Link("Settings", "/settings")),
        new Link("Add a day", "/propers/new"),
        new Link("Another date in one year", "/propers/new?for=one-year"),
        List.of(parts));
  }

  private static ProperForm form(boolean isOfOneYear, String removal) {
    return new ProperForm(
        Invented.frame("settings"),
        "Our Lady of the Ford",
        "/propers/x",
        "",
        BACK,
        isOfOneYear,
        choice("none of these", "Saint Romuald, Abbot"),
        Field.of("Our Lady of the Ford"),
        Field.of("Beatae Mariae Virginis de Vado"),
        Field.empty(),
        new Field("30", "Month 2, day 30 is no day of the year."),
        choice("August", "September"),
        choice("white", "red"),
        choice("principal patron of the diocese: feast"),
        choice("no, on its own day"),
        Field.of("2027-08-20"),
        new Choice(
            List.of(new Choice.Option("sm", "Saint Martin", true)),
            "A feast of one church names its church."),
        removal.isEmpty() ? Link.NONE : new Link("Remove it", removal),
        "3");
  }
}
