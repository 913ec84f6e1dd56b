package vestiary.calendar;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class TermTest {

  @Test
  void a_term_is_written_in_lower_case_with_hyphens() {
    assertEquals("feast-of-the-lord", Rank.FEAST_OF_THE_LORD.id());
  }

  @Test
  void a_term_is_found_whatever_its_case_and_blanks() {
    assertEquals(Optional.of(MassKind.OF_THE_DAY), Term.find(MassKind.class, " Of-The-Day "));
    assertEquals(Optional.empty(), Term.find(MassKind.class, "of the day"));
  }
}
