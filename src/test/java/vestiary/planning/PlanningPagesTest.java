package vestiary.planning;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class PlanningPagesTest {

  private static final String SHORT = "Three concelebrants need white; two white sets are there";

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_bare_address_leads_to_the_present_week() {
    open("/").leadsTo("/week");
    page("/week").isHeaded("30 November to 6 December 2026");
  }

  @Test
  void the_week_names_the_shortage_and_leads_to_its_proof() {
    Page week = page("/week/2026-12-07").isHeaded("7 to 13 December 2026").says(SHORT);

    String proof = clash("chasuble");
    week.links(proof).links("/day/2026-12-08");
    page(proof).isHeaded(SHORT);
  }

  @Test
  void the_week_before_announces_it() {
    page("/week/2026-11-30").says("In the week after", SHORT + ".").links(clash("chasuble"));
  }

  @Test
  void any_day_of_a_week_opens_it() {
    for (int day = 7; day <= 13; day++) {
      page("/week/2026-12-%02d".formatted(day)).isHeaded("7 to 13 December 2026");
    }
  }

  @Test
  void a_week_shows_the_churches_that_are_chosen() {
    page("/week/2026-12-07?church=sa&church=nowhere")
        .says("Saint Anne")
        .keepsSilentOn("Ashlanding");
  }

  @Test
  void the_proof_counts_three_and_two_and_accounts_for_thirteen_sets() {
    Page proof =
        page(clash("chasuble"))
            .says(
                "3 needed",
                "2 there",
                "Three needed, two there, one short.",
                "The thirteen sets of the cluster that count as white",
                "Thirteen, each counted once.",
                "GIRM 209");

    int counted =
        Pattern.compile("<td class=\"r n\"><b>(\\d+)</b>")
            .matcher(proof.html())
            .results()
            .mapToInt(r -> Integer.parseInt(r.group(1)))
            .sum();
    assertEquals(13, counted);
  }

  @Test
  void every_clash_of_the_fortnight_has_a_page_and_stands_in_the_list() {
    Page list = page("/clashes?from=2026-11-30&to=2026-12-13");
    List<String> addresses = list.addresses("/clashes/[0-9-]+/[^\"]+");

    assertEquals(Asking.clashes("2026-11-30", "2026-12-13").size(), addresses.size());
    addresses.forEach(address -> page(address).links("/week/" + monday(address)));
  }

  @Test
  void a_clash_that_is_mended_is_not_there_any_more() {
    String proof = clash("chasuble");
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("concelebrants", 2));

    open(proof).is(404).isHeaded("Not there").links("/clashes");
  }

  @Test
  void the_day_says_why_it_is_white_and_what_its_evening_is() {
    // GIRM 346 a; the Immaculate Conception is a solemnity of 8 December (General Calendar).
    page("/day/2026-12-08")
        .isHeaded("Solemnity: The Immaculate Conception of the Blessed Virgin Mary")
        .says("White, for the Blessed Virgin Mary (GIRM 346 a).", SHORT + ".", "See why")
        .links(clash("chasuble"));
  }

  @Test
  void a_title_that_is_a_memorial_elsewhere_is_shown_as_that_churchs_own_solemnity() {
    // UNLY 52 c, 59 I.4: one saint, a memorial in five churches and a solemnity in the sixth.
    page("/day/2026-11-11")
        .isHeaded("Memorial: Saint Martin of Tours, Bishop")
        .says("Where a church keeps its own day", "Solemnity: Saint Martin of Tours, Bishop");
    page("/week/2026-11-09").says("Solemnity: Saint Martin of Tours, Bishop");
  }

  @Test
  void on_a_green_sunday_one_of_two_churches_keeps_its_dedication_and_says_by_which_rules() {
    // UNLY 59 I.4 b and II.6: the anniversary of its own dedication stands before the Sunday.
    page("/day/2027-09-19")
        .isHeaded("Twenty-fifth Sunday in Ordinary Time")
        .says(
            "Solemnity: Anniversary of the Dedication of This Church, white.",
            "which stands before the Twenty-fifth Sunday in Ordinary Time (UNLY 59 I.4 b)",
            "stands at number 4 of the table of liturgical days");
    page("/week/2027-09-13").says("Anniversary of the Dedication of This Church");
  }

  @Test
  void the_day_before_says_that_its_evening_belongs_to_the_solemnity() {
    // UNLY 3 and 11: solemnities begin with first vespers of the day before.
    Page eve =
        page("/day/2026-12-07")
            .isHeaded("Memorial: Saint Ambrose, Bishop and Doctor of the Church")
            .says("in the evening The Immaculate Conception of the Blessed Virgin Mary begins");

    Map<String, Object> anticipated = Asking.mass("ht", "2026-12-07T18:00");
    eve.links("/masses/" + anticipated.get("id"));
    assertEquals("immaculate-conception", anticipated.get("celebration"));
    page("/masses/" + anticipated.get("id"))
        .says("White, for the Blessed Virgin Mary (GIRM 346 a).");
  }

  @Test
  void the_week_marks_the_holy_day_and_the_evening_before_it() {
    page("/week/2026-12-07").says("holy day of obligation", "evening:");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/week/today",
        "/week/2026-02-30",
        "/week/0001-01-01",
        "/week/9999-12-31",
        "/week/+999999999-12-31",
        "/week/2026-12-7",
        "/week/%3Cscript%3E",
        "/day/2026-13-01",
        "/day/tomorrow",
        "/day/-1",
        "/clashes?from=soon",
        "/clashes?from=2026-12-07&to=2026-12-32",
        "/clashes/2026-12-08/no-such-clash",
        "/clashes/never/no-such-clash",
        "/nowhere"
      })
  void a_date_that_is_none_is_told_with_a_page(String address) {
    Page page = open(address).is(404).isHeaded("Not there").links("/week");

    assertTrue(!page.html().contains("<script>"), "a tag of the address is a tag of the page");
  }

  @Test
  void what_is_no_more_in_the_way_was_not_removed_or_renamed_nor_was_a_day() {
    open("/clashes/2026-12-08/2026-12-08-aaaaaaaaaaaaaaaa")
        .is(404)
        .says("This stands in the way no more")
        .keepsSilentOn("renamed");
    open("/week/1850-01-01").is(404).says("is no day that the calendar knows");
    open("/day/1850-01-01").is(404).says("is no day that the calendar knows");
  }

  @Test
  void a_list_that_ends_before_it_begins_shows_a_fortnight() {
    page("/clashes?from=2026-12-07&to=2026-11-30").isHeaded("7 to 20 December 2026");
  }

  @Test
  void a_cluster_without_a_church_says_where_to_begin() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    Page week = page("/week").says("No church is entered yet.").links("/churches/new");
    assertFalse(week.html().contains("/masses/new"), "a Mass needs a church to be said in");
    page("/day/2026-12-08").says("No Mass is entered for this day.");
    page("/clashes");
  }

  @Test
  void a_browser_is_told_with_a_page_and_a_program_with_a_problem_document() {
    open("/day/never").is(404);
    Sending.get("/day/never")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("type", equalTo("/problems/not-there"));
  }

  private static String clash(String pieceKind) {
    Object id =
        Asking.only(
                Asking.clashes("2026-12-08", "2026-12-08").stream()
                    .filter(c -> pieceKind.equals(c.get("pieceKind")))
                    .toList())
            .get("id");
    return "/clashes/2026-12-08/" + id;
  }

  private static String monday(String address) {
    return WeekSheet.monday(LocalDate.parse(address.split("/")[2])).toString();
  }
}
