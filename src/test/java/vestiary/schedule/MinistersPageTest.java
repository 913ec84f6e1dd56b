package vestiary.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import vestiary.scenario.Asking;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

/** Who vests besides celebrants and deacons, as people enter it. */
@QuarkusTest
class MinistersPageTest {

  private static final String DAY = "2026-12-09";
  private static final String NEW = "/masses/new?church=ht&date=" + DAY + "&time=15:00";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void servers_readers_a_bishop_and_a_procession_are_entered_with_the_mass() {
    Map<String, List<String>> form =
        page(NEW)
            .form(
                "/masses",
                Map.of(
                    "minutes", "60",
                    "servers", "3",
                    "readers", "1",
                    "serverSizes", "120, 130; 130"));
    form.put("bishop", List.of("true"));
    form.put("alsoCope", List.of("true"));

    send("/masses", form);

    Map<String, Object> mass = mass();
    assertEquals(true, mass.get("bishop"));
    assertEquals(List.of("cope"), mass.get("also"));
    assertEquals(
        List.of(
            Map.of("kind", "server", "count", 3, "sizes", List.of("120", "130", "130")),
            Map.of("kind", "reader", "count", 1, "sizes", List.of())),
        mass.get("ministers"));
  }

  @Test
  void a_form_sent_back_as_it_stands_changes_none_of_it() {
    Map<String, Object> before =
        enter(
            Map.of(
                "bishop",
                true,
                "also",
                List.of("humeral-veil"),
                "ministers",
                List.of(
                    Map.of("kind", "server", "count", 2, "sizes", List.of("120")),
                    Map.of("kind", "acolyte", "count", 2, "sizes", List.of("145", "150")))));
    String action = "/masses/" + before.get("id");

    send(action, page(action).form(action)).leadsTo(action + "?saved=yes");

    for (String field : List.of("bishop", "also", "ministers", "chosen")) {
      assertEquals(before.get(field), mass().get(field), field);
    }
  }

  @Test
  void sizes_that_the_form_does_not_show_stay_for_those_who_remain() {
    Map<String, Object> before =
        enter(
            Map.of(
                "ministers",
                List.of(Map.of("kind", "acolyte", "count", 2, "sizes", List.of("145", "150")))));
    String action = "/masses/" + before.get("id");

    send(action, page(action).form(action, Map.of("acolytes", "1")));

    assertEquals(
        List.of(Map.of("kind", "acolyte", "count", 1, "sizes", List.of("145"))),
        mass().get("ministers"));
  }

  @Test
  void a_bishop_who_is_the_celebrant_is_ticked_and_goes_with_him() {
    Map<String, Object> before = enter(Map.of("celebrant", "aldous-fenwarden"));
    String action = "/masses/" + before.get("id");
    assertEquals(List.of("true"), page(action).form(action).get("bishop"));

    send(action, page(action).form(action, Map.of("celebrant", "Cosmas Ilverton")));

    assertEquals(false, mass().get("bishop"));
  }

  @Test
  void at_an_ordination_the_form_asks_who_is_ordained_and_elsewhere_it_does_not() {
    String ordination = NEW + "&mass=ordination";
    assertFalse(page(NEW).form("/masses").containsKey("newPriests"));

    send(
        "/masses",
        page(ordination)
            .form("/masses", Map.of("minutes", "150", "mass", "ordination", "newPriests", "2")));

    assertEquals(
        List.of(Map.of("kind", "new-priest", "count", 2, "sizes", List.of())),
        mass().get("ministers"));
  }

  @Test
  void a_number_that_cannot_be_is_told_beside_its_field() {
    Map<String, List<String>> form =
        page(NEW)
            .form(
                "/masses",
                Map.of(
                    "minutes", "60",
                    "servers", "201",
                    "acolytes", "two",
                    "readers", "1"));

    Page page = refusing.unchanged(() -> send("/masses", form)).is(400);

    page.faults("servers", "This is 201; it must be from 0 to 200.")
        .faults("acolytes", "\"two\" is no whole number.")
        .keeps(form, "/masses");
  }

  @Test
  void more_sizes_than_servers_are_told_beside_the_sizes() {
    Map<String, List<String>> form =
        page(NEW)
            .form("/masses", Map.of("minutes", "60", "servers", "1", "serverSizes", "120, 130"));

    refusing
        .unchanged(() -> send("/masses", form))
        .is(400)
        .faults("serverSizes", "This names 2 for 1; name one each at most.");
  }

  private static Map<String, Object> enter(Map<String, Object> facts) {
    Map<String, Object> mass = new HashMap<>(facts);
    mass.put("church", "ht");
    mass.put("start", DAY + "T15:00");
    return Sending.mass(mass);
  }

  private static Map<String, Object> mass() {
    return Asking.mass("ht", DAY + "T15:00");
  }
}
