package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is counted as published, and under which name. */
class SourceTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "GIRM 346 b; UNLY 59 I.4 c | true | GIRM",
        "canon 1246 | true | canon",
        "UNLY 40, 44 (a page says otherwise; the norm decides) | true | UNLY",
        "Diocese of Green Bay, Liturgical Year 2018 | true | Diocese of Green Bay, Liturgical Year 2018",
        "article 'June Feast Days' (2019) | true | article 'June Feast Days'",
        "reckoned from UNLY 60 | false | reckoned from UNLY 60",
        "decree of 2021 (year from memory) | false | decree of 2021",
        "common practice, no source | false | common practice, no source"
      })
  void a_source_says_whether_it_was_seen_in_print(
      String text, boolean published, String publication) {
    assertEquals(published, new Source(text).isPublished());
    assertEquals(publication, new Source(text).publication());
  }

  @Test
  void no_fact_goes_without_a_source() {
    assertThrows(IllegalArgumentException.class, () -> new Source(" "));
  }
}
