package vestiary.exchange;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands in a cell is known however it was typed. */
class KnownWordsTest {

  @ParameterizedTest
  @ValueSource(strings = {"deacon's stole", "deacon’s stole", "Deacon’s Stole", "estola diaconal"})
  void a_deacon_s_stole_is_known_with_either_apostrophe(String cell) {
    assertTrue(KnownWords.CELLS.of("deacon-stole").contains(PlainWords.joined(cell)), cell);
  }
}
