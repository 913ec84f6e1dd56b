package vestiary.people;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** First name and initial, and no more. */
class ChildNameTest {

  @ParameterizedTest
  @CsvSource({
    "Tamsin Quillfeather, Tamsin Q.",
    "Ana María de la Cruz, Ana C.",
    "Tamsin, Tamsin",
    "Élodie Ørsted, Élodie Ø.",
    "Ada 𝒬uill, Ada 𝒬."
  })
  void everybody_reads_the_first_name_and_an_initial(String whole, String shown) {
    assertEquals(shown, new ChildName(whole).shown());
  }

  @ParameterizedTest
  @CsvSource({
    "Tamsin Quillfeather, tamsin-quillfeather, true",
    "Tamsin Quillfeather, tquillfeather, true",
    "Tamsin Quillfeather, tamsin-q, false",
    "Felicia Li, felicia-l, false",
    "Felicia Li, felicia-li, true",
    "Ana María de la Cruz, ana-maria, true"
  })
  void an_address_tells_no_more_than_that(String whole, String slug, boolean tells) {
    assertEquals(tells, new ChildName(whole).isToldBy(slug));
  }

  @Test
  void the_name_is_known_in_both_forms() {
    ChildName child = new ChildName("Tamsin Quillfeather");

    assertTrue(child.isCalled("tamsin quillfeather"));
    assertTrue(child.isCalled("Tamsin Q."));
    assertFalse(child.isCalled("Tamsin Quickley"));
  }
}
