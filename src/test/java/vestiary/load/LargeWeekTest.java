package vestiary.load;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.allocation.ClashCheck;
import vestiary.allocation.Shortage;
import vestiary.allocation.ShortageProof;
import vestiary.allocation.Span;

/** Weeks of real and of far larger size, every finding counted again. */
class LargeWeekTest {

  @ParameterizedTest
  @CsvSource({"8, 60, 100", "8, 60, 40", "80, 600, 1000", "80, 600, 400", "150, 1000, 600"})
  void every_finding_of_a_week_holds_when_counted_again(int churches, int masses, int sets) {
    Span span = RandomWeek.of(churches, masses, sets, 1);

    List<Shortage> found = ClashCheck.find(span);

    assertFalse(found.isEmpty());
    found.forEach(s -> assertEquals(List.of(), ShortageProof.findObjections(s, span)));
  }
}
