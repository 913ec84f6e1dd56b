package vestiary.remedy;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Mending;
import vestiary.scenario.Scenario;

/** The page of a clash with its buttons, as a browser without a script sends them. */
@QuarkusTest
class RemedyPageTest {

  @Inject Scenario scenario;

  private Map<String, Object> clash;
  private String address;

  @BeforeEach
  void the_jubilee() {
    scenario.load();
    clash = Mending.clash("2026-12-08", "chasuble");
    address = "/clashes/2026-12-08/" + clash.get("id");
  }

  @Test
  void the_page_lists_what_mends_it_with_costs_norm_and_one_button_each() {
    page(address)
        .says(
            "What mends it, least trouble first",
            "Bring three matching white sets from Holy Trinity: HT-W1, HT-W2 and HT-W3.",
            "One drive of 14 minutes by whoever goes.",
            "Lawful: stole over the alb, without a chasuble (GIRM 209; RS 124).",
            "Advice: nothing to press.");
  }

  @Test
  void week_and_day_lead_to_what_mends_it() {
    page("/week/2026-12-07").links(address + "#mends");
    page("/day/2026-12-08").links(address + "#mends");
  }

  @Test
  void one_press_mends_it_the_page_says_so_and_undo_brings_it_back() {
    press(address + "/remedies/1", fingerprint(0))
        .statusCode(303)
        .header("Location", endsWith(address + "#mends"));

    page(address)
        .says("This stands no more.", "Done: Bring three matching white sets", "Undo")
        .links("/movements?week=2026-12-07");
    assertFalse(Mending.stands(clash.get("id")));

    press(address + "/remedies/1/undo", Map.of()).statusCode(303);

    page(address).says("What mends it, least trouble first").keepsSilentOn("Done:");
    assertTrue(Mending.stands(clash.get("id")));
  }

  @Test
  void what_is_accepted_by_name_can_be_taken_back_where_it_is_worth_knowing() {
    Map<String, Object> step = Mending.remedy(clash, "step");
    press(
            address + "/remedies/" + step.get("n"),
            Map.of("fingerprint", step.get("fingerprint"), "person", "Father Wexcombe"))
        .statusCode(303);

    Object known =
        Asking.only(
                Asking.clashes("2026-12-08", "2026-12-08").stream()
                    .filter(one -> one.get("severity").equals("know"))
                    .toList())
            .get("id");
    page("/clashes/2026-12-08/" + known)
        .says("Worth knowing", "Father Wexcombe in alb and stole, accepted on", "Undo");

    press("/clashes/2026-12-08/%s/remedies/%s/undo".formatted(known, step.get("n")), Map.of())
        .statusCode(303);
    assertTrue(Mending.stands(clash.get("id")));
  }

  @Test
  void what_is_not_offered_any_more_is_said_over_the_list_as_it_is_now() {
    press(address + "/remedies/1", Map.of("fingerprint", "0123456789abcdef"))
        .statusCode(409)
        .body(containsString("has changed since you looked"))
        .body(containsString("What mends it, least trouble first"));
  }

  @Test
  void a_press_on_a_clash_that_is_gone_is_told_with_a_page() {
    Asking.change(Asking.mass("sa", "2026-12-08T18:30"), Map.of("concelebrants", 2));

    press(address + "/remedies/1", fingerprint(0))
        .statusCode(409)
        .body(containsString("does not stand any more"));
    open(address).is(404);
  }

  @Test
  void a_date_that_is_not_that_of_the_clash_leads_to_the_same_page() {
    page("/clashes/2026-12-09/" + clash.get("id")).says("What mends it, least trouble first");
  }

  private Map<String, String> fingerprint(int at) {
    return Map.of("fingerprint", Mending.remedies(clash).get(at).get("fingerprint").toString());
  }

  private static ValidatableResponse press(String address, Map<String, ?> form) {
    return RestAssured.given()
        .redirects()
        .follow(false)
        .accept("text/html")
        .contentType("application/x-www-form-urlencoded")
        .formParams(form)
        .post(address)
        .then();
  }
}
