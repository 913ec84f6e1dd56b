package vestiary.vesting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which alb suits whom.
 *
 * <p>Source: the "standard size notes" of a published pattern of a Roman-style alb, in inches.
 */
class AlbLengthTest {

  private static final double INCH = 2.54;

  /** From and to, in inches of height; the back length of the alb, in inches. */
  @ParameterizedTest
  @CsvSource({"63, 65, 54", "66, 68, 56", "69, 71, 58", "72, 75, 60", "76, 78, 62"})
  void the_sizes_of_the_published_pattern_suit_those_for_whom_they_are_made(
      int shortest, int tallest, int back) {
    String size = String.valueOf(Math.round(back * INCH));

    for (int height = shortest; height <= tallest; height++) {
      AlbLength wearer = new AlbLength((int) Math.round(height * INCH));
      assertTrue(wearer.suits(size), wearer + " in " + size);
    }
  }

  @Test
  void
      in_the_largest_of_the_pattern_the_smallest_man_trips_and_in_the_smallest_the_tallest_looks_poor() {
    assertTrue(new AlbLength(160).trips("157"));
    assertFalse(new AlbLength(160).suits("157"));
    assertFalse(new AlbLength(196).trips("137"));
    assertFalse(new AlbLength(196).suits("137"));
  }

  @Test
  void too_long_is_worse_than_too_short_since_it_trips_him() {
    AlbLength wearer = new AlbLength(175);

    assertTrue(wearer.strain("153") > wearer.strain("135"));
    assertTrue(wearer.strain("145") < wearer.strain("XL"));
    assertTrue(wearer.strain("XL") < wearer.strain("160"));
  }

  @Test
  void a_height_or_a_length_that_nobody_knows_speaks_against_no_alb() {
    assertTrue(AlbLength.UNKNOWN.suits("120"));
    assertTrue(new AlbLength(180).suits("large"));
    assertEquals(0, AlbLength.UNKNOWN.strain("120"));
    assertEquals(132, AlbLength.centimetres("132 cm"));
    assertEquals(0, AlbLength.centimetres("54 in"));
  }

  @Test
  void what_is_no_height_of_a_man_is_refused() {
    assertThrows(IllegalArgumentException.class, () -> new AlbLength(17));
    assertThrows(IllegalArgumentException.class, () -> new AlbLength(1750));
  }
}
