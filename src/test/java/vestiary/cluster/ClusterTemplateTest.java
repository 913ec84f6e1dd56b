package vestiary.cluster;

import static vestiary.web.InventedForm.choice;

import java.util.List;
import org.junit.jupiter.api.Test;
import vestiary.web.Field;
import vestiary.web.Frame;
import vestiary.web.Invented;
import vestiary.web.Link;
import vestiary.web.RenderedPage;

class ClusterTemplateTest {

  @Test
  void an_empty_cluster_begins_with_its_calendar() {
    SetupView view = new SetupView(Frame.empty(), "/setup", "", fields(Field.empty()));

    RenderedPage page = RenderedPage.of("cluster/setup", "setup", view);

    page.keepsTheHouseRules()
        .says("A new cluster", "Save, then enter the first church")
        .keepsSilentOn("Clashes");
  }

  @Test
  void the_settings_name_each_church_and_policy() {
    RenderedPage page = RenderedPage.of("cluster/settings", "settings", settings());

    page.keepsTheHouseRules()
        .says(
            "Holy Trinity Tollbridge set out 30 minutes before, cleared 15 after",
            "Days of your own",
            "White may stand in for all at a large liturgy (common practice, no norm)",
            "Saved.");
  }

  @Test
  void a_church_has_its_days_its_sacristy_and_its_journeys() {
    RenderedPage page = RenderedPage.of("cluster/church", "church", church("14"));

    page.keepsTheHouseRules()
        .says("The title’s day", "Saint Anne", "about 19 minutes by the map", "Latitude");
  }

  private static CalendarFields fields(Field name) {
    return new CalendarFields(
        name,
        Field.of("America/Chicago"),
        List.of("America/Chicago", "Europe/London"),
        Field.of("en, es"),
        choice("United States", "General Roman Calendar"),
        choice("on Sunday", "on 6 January"),
        choice("on Sunday", "on Thursday"),
        choice("on Sunday", "on Thursday"));
  }

  private static SettingsView settings() {
    return new SettingsView(
        Invented.frame("settings"),
        "/settings",
        "Saved.",
        "",
        fields(Field.of("Wenlow Valley")),
        policies(),
        Invented.churches().stream()
            .map(
                c ->
                    new SettingsView.Church(
                        c,
                        Invented.place(c),
                        "set out 30 minutes before, cleared 15 after",
                        "/churches/ht"))
            .toList(),
        new Link("Add a church", "/churches/new"),
        new Link("Days of your own", "/propers"),
        "4");
  }

  private static SettingsView.Policies policies() {
    return new SettingsView.Policies(
        Field.of("16:00"),
        choice("the one that must be heard", "the higher in rank"),
        choice("the solemnity’s Mass", "the Mass of the day itself"),
        choice("in stole over alb", "in white chasubles"),
        false,
        Field.of("5"),
        Field.of("20"),
        Field.of("60"),
        Field.of("30"),
        choice("the calendar day", "the liturgical day"),
        new Field("0", "One Mass a day needs nobody’s leave; write 1 or more."),
        Field.of("3"),
        true,
        false);
  }

  private static ChurchForm church(String minutes) {
    return new ChurchForm(
        Invented.frame("settings"),
        "Holy Trinity, Tollbridge",
        "/churches/ht",
        "",
        "",
        new Link("Settings", "/settings"),
        Field.of("ht"),
        Field.of("Holy Trinity"),
        Field.of("Holy Trinity, Tollbridge"),
        List.of("Holy Trinity, Tollbridge"),
        Field.of("Tollbridge"),
        Field.of("The Most Holy Trinity"),
        choice("The Most Holy Trinity", "none of these"),
        Field.empty(),
        Field.empty(),
        Field.empty(),
        choice("white", "red"),
        Field.of("1908-06-14"),
        Field.of("30"),
        Field.of("15"),
        Field.empty(),
        Field.empty(),
        List.of(
            new ChurchForm.Journey("sa", "Saint Anne", "Millferry", Field.of(minutes), ""),
            new ChurchForm.Journey(
                "sj", "Saint Joseph", "Ashlanding", Field.empty(), "about 19 minutes by the map")),
        "1",
        List.of());
  }
}
