package vestiary.proper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.proper.ProperResourceTest.enter;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ProperPageTest {

  private static final String HOSTILE = "<script>alert(\"it's\")</script> & more";
  private static final String ALL = "/propers";
  private static final String OUR_LADY = "/propers/our-lady-of-the-ford";

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void the_page_says_of_each_day_what_it_is_who_keeps_it_and_what_becomes_of_it() {
    // Read on 30 November 2026, so that the coming year is 2027.
    page(ALL)
        .isHeaded("Days of your own")
        .says(
            "Three days are kept beside the calendar of the United States",
            "15 May Saint Isidore white, principal patron of the town or place: solemnity",
            "Kept on Saturday 15 May 2027.",
            "Our Lady of the Rosary",
            "19 August Our Lady of the Ford white, principal patron of the diocese: feast",
            "Kept on Thursday 19 August 2027.",
            "All churches",
            "The ordo of your diocese decides")
        .links("/propers/new")
        .links("/settings")
        .links(OUR_LADY);
  }

  @Test
  void a_day_that_meets_a_higher_one_says_why_it_is_not_kept() {
    // 7 March 2027 is the Fourth Sunday of Lent; a solemnity goes to Monday (UNLY 60), a feast is
    // left out. 15 August, the Assumption, leaves out a memorial.
    enter(named("Saint Weir", 3, 7, "patron-of-the-place", "sm"));
    enter(named("Saint Lock", 8, 15, "memorial"));

    page(ALL)
        .says(
            "Its day is Sunday 7 March 2027. Kept on Monday 8 March 2027 instead, because it yields to the Fourth Sunday of Lent (Laetare).",
            "Its day is Sunday 15 August 2027. Left out this year, because the day keeps a higher celebration, the Assumption of the Blessed Virgin Mary.");
  }

  @Test
  void a_day_says_where_one_church_keeps_it_otherwise() {
    enter(named("Saint Weir", 8, 19, "patron-of-the-place", "sm"));

    page(ALL)
        .says(
            "Kept on Thursday 19 August 2027. In Saint Martin: Its day is Thursday 19 August 2027. Left out this year, because the day keeps a higher celebration, Saint Weir.");
  }

  @Test
  void a_memorial_that_is_chosen_or_commemorated_says_so() {
    // 16 March 2027 is a weekday of Lent (GIRM 355 a), 8 June one of Ordinary Time.
    enter(named("Saint Weir", 3, 16, "optional-memorial"));
    enter(named("Saint Lock", 6, 8, "optional-memorial"));

    page(ALL)
        .says(
            "On Tuesday 16 March 2027 its collect may be said; Mass and colour are the weekday’s.",
            "May be kept on Tuesday 8 June 2027.");
  }

  @Test
  void a_date_of_one_year_stands_under_its_own_heading() {
    enter(Map.of("celebration", "our-lady-of-the-ford", "keptOn", "2027-08-20"));

    page(ALL)
        .says(
            "In one year only 20 August 2027 Our Lady of the Ford white, feast",
            "Kept on Friday 20 August 2027 instead, because so it was decided for this year.");
    page(OUR_LADY + "-2027").isHeaded("Our Lady of the Ford in 2027");
  }

  @Test
  void without_a_day_the_page_says_what_belongs_here() {
    scenario.empty();
    Sending.put("/api/settings", Map.of("name", "Valley")).then().statusCode(200);

    page(ALL)
        .says("Nothing is entered beside the General Roman Calendar yet")
        .keepsSilentOn("Every year");
    page("/propers/new").says("In all churches; none is entered yet.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"our-lady-of-the-ford", "isidore-the-farmer", "romuald", "romuald-2027"})
  void a_form_sent_back_as_it_stands_changes_nothing(String id) {
    enter(
        Map.of(
            "celebration",
            "romuald",
            "place",
            "patron-of-the-place",
            "onSunday",
            "nearest",
            "churches",
            List.of("pp", "sm")));
    enter(Map.of("celebration", "romuald", "keptOn", "2027-06-21", "churches", List.of("sm")));
    String action = ALL + "/" + id;
    List<Map<String, Object>> before = Asking.list("/api/propers");

    send(action, page(action).form(action)).leadsTo("/propers?done=saved");

    assertEquals(before, Asking.list("/api/propers"));
    page("/propers?done=saved").says("Saved.");
  }

  @Test
  void a_good_form_enters_a_day_for_the_churches_that_are_ticked() {
    Map<String, List<String>> form =
        page("/propers/new").isHeaded("A day of your own").form(ALL, typed());
    form.put("churches", List.of("pp", "sm"));

    send(ALL, form).leadsTo("/propers?done=saved");

    Map<String, Object> kept = proper("saint-weir");
    assertEquals("Saint Weir", kept.get("name"));
    assertEquals(List.of("pp", "sm"), kept.get("churches"));
    assertEquals(
        List.of("pp", "sm"),
        page("/propers/saint-weir").form("/propers/saint-weir").get("churches"));
  }

  @Test
  void a_good_form_enters_a_date_of_one_year() {
    Map<String, String> typed =
        Map.of("celebration", "our-lady-of-the-ford", "keptOn", "2028-08-21");

    send(ALL, page("/propers/new?for=one-year").form(ALL, typed)).leadsTo("/propers?done=saved");

    assertEquals("2028-08-21", proper("our-lady-of-the-ford-2028").get("keptOn"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          400 | celebration | agnes            | Choose one of the calendar or name one, not both
          400 | day         | 30               | Month 2, day 30 is no day of the year.
          400 | day         | 29               | 29 February is not in every year
          400 | day         | x                | "x" is no whole number.
          400 | colour      |                  | This is missing.
          400 | place       |                  | This is missing.
          409 | place       | patron-of-the-diocese | Our Lady of the Ford is the principal patron
          409 | name        | Our Lady of the Ford  | "Our Lady of the Ford" is entered already
          422 | onSunday    | after            | Saint Weir does not stand above a Sunday
          422 | name        | Agnes            | The calendar of the United States has "agnes" already
          422 | place       | feast-of-one-church   |
          """)
  void a_bad_field_keeps_all_that_was_typed_and_says_why(
      int status, String field, String value, String sentence) {
    Map<String, String> typed = new HashMap<>(typed());
    typed.put("latin", HOSTILE);
    typed.put(field, value == null ? "" : value);
    Map<String, List<String>> form = page("/propers/new").form(ALL, typed);

    var page = refusing.unchanged(() -> send(ALL, form));

    page.is(status)
        .isHeaded("A day of your own")
        .says("Nothing was saved; one thing below is to be put right.")
        .keeps(form, ALL);
    String error = page.error(sentence == null ? "churches" : field);
    assertEquals(
        sentence == null ? "A feast of one church" : sentence,
        error.substring(0, (sentence == null ? "A feast of one church" : sentence).length()));
  }

  @Test
  void a_date_of_one_year_without_a_date_is_told_at_its_field() {
    Map<String, List<String>> form =
        page("/propers/new?for=one-year").form(ALL, Map.of("celebration", "agnes"));

    refusing
        .unchanged(() -> send(ALL, form))
        .is(400)
        .isHeaded("Another date in one year")
        .faults("keptOn", "This is missing.")
        .keeps(form, ALL);
  }

  @Test
  void whoever_looked_before_another_changed_it_is_told_and_keeps_what_was_typed() {
    Map<String, List<String>> form = page(OUR_LADY).form(OUR_LADY, Map.of("name", HOSTILE));
    Map<String, Object> body = Sending.with(proper("our-lady-of-the-ford"), "churches", "sm");
    Sending.put("/api" + OUR_LADY, Sending.with(body, "churches", List.of("sm")))
        .then()
        .statusCode(200);

    refusing
        .unchanged(() -> send(OUR_LADY, form))
        .is(409)
        .isHeaded("Our Lady of the Ford")
        .says("Somebody changed this day while you were at it.")
        .keeps(form, OUR_LADY);
  }

  @Test
  void a_day_is_removed_after_a_question() {
    page(OUR_LADY).links(OUR_LADY + "/removal");
    Map<String, List<String>> form =
        page(OUR_LADY + "/removal")
            .isHeaded("Remove Our Lady of the Ford?")
            .says("All churches then keep its day as the calendar has it.", "No, leave it")
            .form(OUR_LADY + "/removal");

    send(OUR_LADY + "/removal", form).leadsTo("/propers?done=removed");

    page("/propers?done=removed").says("Removed.").keepsSilentOn("Our Lady of the Ford");
    open(OUR_LADY).is(404).isHeaded("Not there").links(ALL);
  }

  @Test
  void a_day_that_was_changed_since_the_question_is_not_removed() {
    Map<String, List<String>> form = page(OUR_LADY + "/removal").form(OUR_LADY + "/removal");
    send(OUR_LADY, page(OUR_LADY).form(OUR_LADY, Map.of("day", "20")))
        .leadsTo("/propers?done=saved");

    refusing
        .unchanged(() -> send(OUR_LADY + "/removal", form))
        .is(409)
        .isHeaded("Remove Our Lady of the Ford?")
        .says("Somebody changed this day while you were at it.");
  }

  @Test
  void a_day_that_a_title_is_about_stays() {
    Map<String, Object> church = Sending.get("/api/churches/sm").jsonPath().getMap("");
    Sending.put("/api/churches/sm", Sending.with(church, "titular", "our-lady-of-the-ford"))
        .then()
        .statusCode(200);

    refusing
        .unchanged(
            () ->
                send(
                    OUR_LADY + "/removal", page(OUR_LADY + "/removal").form(OUR_LADY + "/removal")))
        .is(409)
        .says("is the title of Saint Martin; choose another title there first.");
  }

  @Test
  void the_form_of_a_church_offers_the_days_of_the_diocese_as_its_title() {
    Map<String, List<String>> form =
        page("/churches/sm").form("/churches/sm", Map.of("titular", "our-lady-of-the-ford"));

    send("/churches/sm", form).leadsTo("/churches/sm?done=saved");

    page(ALL).says("Kept on Thursday 19 August 2027.");
    assertEquals(
        "our-lady-of-the-ford", Sending.get("/api/churches/sm").jsonPath().getString("titular"));
  }

  private static Map<String, String> typed() {
    return Map.of(
        "name", "Saint Weir",
        "day", "19",
        "month", "2",
        "colour", "red",
        "place", "memorial");
  }

  private static Map<String, Object> named(
      String name, int month, int day, String place, String... churches) {
    return Map.of(
        "name", name,
        "month", month,
        "day", day,
        "colour", "white",
        "place", place,
        "churches", List.of(churches));
  }

  private static Map<String, Object> proper(String id) {
    return Sending.get("/api/propers/" + id).jsonPath().getMap("");
  }
}
