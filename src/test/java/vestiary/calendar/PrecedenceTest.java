package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** UNLY 59. */
class PrecedenceTest {

  @Test
  void the_constants_stand_in_the_order_of_the_table() {
    int[] numbers = Arrays.stream(Precedence.values()).mapToInt(Precedence::number).toArray();
    int[] sorted = Arrays.stream(numbers).sorted().toArray();

    assertEquals(Arrays.toString(sorted), Arrays.toString(numbers));
    assertEquals(13, Arrays.stream(numbers).distinct().count());
  }

  /** Entries 1 to 4 are its first group, 5 to 9 the second, 10 to 13 the third. */
  @Test
  void each_constant_names_its_group_and_number() {
    for (Precedence place : Precedence.values()) {
      String group = place.number() <= 4 ? "I" : place.number() <= 9 ? "II" : "III";
      assertTrue(place.source().startsWith("UNLY 59 " + group + "." + place.number()));
    }
  }

  @Test
  void the_lord_stands_before_mary_and_mary_before_the_saints() {
    assertTrue(Precedence.SOLEMNITY_OF_THE_LORD.isBefore(Precedence.SOLEMNITY_OF_MARY));
    assertTrue(Precedence.SOLEMNITY_OF_MARY.isBefore(Precedence.SOLEMNITY_OF_A_SAINT));
  }
}
