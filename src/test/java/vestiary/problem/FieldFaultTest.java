package vestiary.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FieldFaultTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "code | code is missing. | This is missing.",
        "policies.turnMinutes | policies.turnMinutes is 99; it must be from 0 to 60."
            + " | This is 99; it must be from 0 to 60.",
        "home | home \"zz\" is no church of this cluster. | \"zz\" is no church of this cluster.",
        "from | from 1850-01-01 lies too far away. | 1850-01-01 lies too far away.",
        "titular.day | titular.day: month 2, day 30 is no day of the year."
            + " | Month 2, day 30 is no day of the year.",
        "longitude | latitude and longitude go together; give both or neither."
            + " | Latitude and longitude go together; give both or neither.",
        "code | The code \"HT-W1-C\" belongs to another piece."
            + " | The code \"HT-W1-C\" belongs to another piece."
      })
  void beside_its_field_a_sentence_does_without_the_name_that_only_programs_know(
      String field, String sentence, String beside) {
    assertEquals(beside, new FieldFault(field, sentence).besideField());
  }
}
