package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static vestiary.scenario.Browsing.upload;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import vestiary.scenario.Asking;
import vestiary.scenario.Browsing;
import vestiary.scenario.Page;
import vestiary.scenario.Refusing;
import vestiary.scenario.Scenario;
import vestiary.scenario.Sending;

@QuarkusTest
class ImportPageTest {

  private static final byte[] GOOD = Csv.file("from,to,minutes", "ht,sa,14");

  @Inject Scenario scenario;
  @Inject Refusing refusing;

  @BeforeEach
  void two_churches() {
    scenario.empty();
    Sending.church("ht");
    Sending.church("sa");
  }

  @Test
  void the_page_offers_every_list_with_its_columns() {
    Page page = Browsing.page("/import").isHeaded("Import");

    for (ImportWhat what : ImportWhat.values()) {
      page.says(ImportWords.name(what));
      what.columns().forEach(column -> page.says(column.name()));
    }
  }

  @ParameterizedTest
  @EnumSource
  void the_list_that_an_address_names_is_chosen(ImportWhat what) {
    Page page = Browsing.page("/import?what=" + what.id());

    assertEquals(List.of(what.id()), page.form("/import").get("what"));
  }

  @Test
  void trying_changes_nothing_and_says_what_would_come_of_it() {
    Page page = refusing.unchanged(() -> upload("journeys", "true", GOOD));

    page.is(200).isHeaded("Import").says("Tried, nothing changed yet: one line can be brought in.");
    assertEquals(List.of("journeys"), page.form("/import").get("what"));
  }

  @Test
  void a_good_list_is_brought_in() {
    upload("journeys", "false", GOOD).is(200).says("One line was brought in.");

    assertEquals(2, Asking.list("/api/journeys").size());
  }

  @Test
  void a_bad_line_is_shown_as_it_stands_and_nothing_is_brought_in() {
    byte[] file = Csv.file("from,to,minutes", "ht,sa,14", "ht,<script>,14");

    Page page = refusing.unchanged(() -> upload("journeys", "false", file));

    page.is(422)
        .says(
            "Nothing was brought in: one line is not understood.",
            "one line understood",
            "3 to \"<script>\" cannot stand here.",
            "ht,<script>,14");
    refusing
        .unchanged(() -> upload("journeys", "true", file))
        .is(200)
        .says("Tried, nothing changed yet: one line is not understood.");
  }

  @Test
  void a_file_without_its_columns_is_told_in_line_one() {
    refusing
        .unchanged(() -> upload("journeys", "false", Csv.file("from,minutes", "ht,14")))
        .is(422)
        .says("missing: to.");
  }

  @Test
  void a_list_that_is_none_is_said_at_its_field() {
    refusing
        .unchanged(() -> upload("organs", "false", GOOD))
        .is(400)
        .faults("what", "Choose what is in the list.");
  }

  @Test
  void an_empty_file_is_said_at_its_field_and_the_list_stays_chosen() {
    Page page = refusing.unchanged(() -> upload("journeys", "false", new byte[0]));

    page.is(400).faults("file", "Choose a file that has something in it.");
    assertEquals(List.of("journeys"), page.form("/import").get("what"));
  }

  @Test
  void more_than_eight_megabytes_are_refused_with_a_page() {
    refusing
        .unchanged(() -> Browsing.send("/import", Map.of("file", List.of("x".repeat(8 << 20)))))
        .is(413)
        .isHeaded("Too large")
        .says("What was sent is larger than 8 MB, which is the most.")
        .links("/import");
  }
}
