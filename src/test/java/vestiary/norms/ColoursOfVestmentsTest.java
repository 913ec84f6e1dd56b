package vestiary.norms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import vestiary.calendar.Colour;
import vestiary.calendar.Term;
import vestiary.vesting.ColourMatch;

/**
 * What a piece of several colours may serve as, beside what the table of single colours says.
 * Source: Redemptionis Sacramentum (RS, 2004) 127.
 */
class ColoursOfVestmentsTest {

  /** The list of a piece says what it may serve as; RS 127 still keeps gold from violet. */
  @ParameterizedTest(name = "a piece of {0} serves {1}: {2}")
  @CsvSource({
    "white red,   red,    proper",
    "red white,   white,  proper",
    "white gold,  red,    none",
    "gold red,    red,    proper",
    "gold violet, violet, none",
    "silver black, black, none",
    "violet black, black, proper",
    "gold,         gold,  proper",
    "white,        gold,  none"
  })
  void a_piece_serves_as_what_it_is_listed(String listed, String wanted, String expected) {
    List<Colour> colours =
        Stream.of(listed.split(" ")).map(ColoursOfVestmentsTest::colour).toList();

    assertEquals(match(expected), ColourMatch.of(colours, colour(wanted), false));
  }

  private static Colour colour(String id) {
    return Term.find(Colour.class, id).orElseThrow();
  }

  private static ColourMatch match(String name) {
    return ColourMatch.valueOf(name.toUpperCase(Locale.ROOT));
  }
}
