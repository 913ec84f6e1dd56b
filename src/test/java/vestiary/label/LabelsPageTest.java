package vestiary.label;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static vestiary.scenario.Browsing.open;
import static vestiary.scenario.Browsing.page;
import static vestiary.scenario.Browsing.send;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import vestiary.scenario.Page;
import vestiary.scenario.Scenario;

/** Labels that are chosen and printed. */
@QuarkusTest
class LabelsPageTest {

  @Inject Scenario scenario;

  @BeforeEach
  void the_invented_cluster() {
    scenario.load();
  }

  @Test
  void each_set_and_each_piece_of_no_set_has_one_label() {
    Page labels = page("/labels?church=sm").says("Four labels on one sheet");

    assertEquals(4, count(labels, "<g class=\"label\""));
    labels.says("SM-W1", "White chasuble, stole", "Saint Martin");
  }

  @Test
  void what_has_its_label_is_not_asked_for_again() {
    Page labels = page("/labels?church=sm");
    send("/labels/printed", labels.form("/labels/printed")).leadsTo("/labels?done=printed");

    page("/labels?church=sm").says("Everything chosen has its label.");
    page("/labels?church=sm&which=all").says("Four labels on one sheet");
  }

  @Test
  void a_sheet_that_is_used_in_part_is_gone_on_with() {
    Page labels = page("/labels?church=sm&start=20").says("Four labels on two sheets");

    // The twentieth of three times seven: second in the last row.
    assertTrue(labels.html().contains("translate(73.2000 243.7500)"), "no label at the 20th place");
    assertTrue(labels.html().contains("translate(7.2000 15.1500)"), "none at the first");
  }

  @Test
  void single_codes_can_be_named() {
    page("/labels?codes=ht-w1, SA-CP1").says("Two labels on one sheet", "HT-W1", "SA-CP1");
    open("/labels?codes=NO-SUCH")
        .is(400)
        .faults("codes", "There is no set and no piece \"NO-SUCH\".");
  }

  @ParameterizedTest
  @CsvSource({"start, 0", "start, 22", "start, x", "sheet, a5", "church, nowhere"})
  void what_no_sheet_has_is_refused(String field, String value) {
    assertFalse(open("/labels?%s=%s".formatted(field, value)).is(400).error(field).isEmpty());
  }

  @Test
  void an_address_of_this_machine_alone_is_warned_of() {
    page("/labels").says("labels printed now will not open on a phone elsewhere");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "http://localhost:8080",
        "http://127.0.0.1",
        "http://10.1.2.3:8080",
        "http://192.168.0.7",
        "http://172.20.1.1",
        "http://[::1]:8080",
        "http://[fd00::7]",
        "http://sacristy.local",
        "http://server"
      })
  void addresses_that_no_phone_elsewhere_opens(String address) {
    assertTrue(ReachedAt.isOwnMachine(address), address);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://vestments.example",
        "https://172.32.0.1",
        "https://11.0.0.1",
        "https://[2001:db8::1]"
      })
  void addresses_that_one_does(String address) {
    assertFalse(ReachedAt.isOwnMachine(address), address);
  }

  @Test
  void a_code_that_is_too_long_for_bars_keeps_its_qr_code() {
    Labelled longest = new Labelled("A".repeat(40), "https://vestments.example/s/A", List.of());

    LabelPicture drawn = LabelPicture.of(longest, LabelSheet.A4_21, 0);

    assertEquals("", drawn.bars());
    assertFalse(drawn.qr().isEmpty());
  }

  private static int count(Page page, String text) {
    Matcher found = Pattern.compile(Pattern.quote(text)).matcher(page.html());
    int count = 0;
    while (found.find()) {
      count++;
    }
    return count;
  }
}
