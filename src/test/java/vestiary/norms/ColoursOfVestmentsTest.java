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
 * Which vestment may serve which colour. Sources: General Instruction of the Roman Missal (GIRM)
 * 346; Redemptionis Sacramentum (RS, 2004) 127 for gold and silver: on feast days, never for violet
 * or black. Gold as a kind of white on other days: common practice, no source.
 */
class ColoursOfVestmentsTest {

  @ParameterizedTest(name = "{0} serves {1} on a feast: {2}, else: {3}")
  @CsvSource({
    "white,  white,  proper,  proper",
    "red,    white,  none,    none",
    "gold,   white,  festive, custom",
    "silver, white,  festive, custom",
    "white,  red,    none,    none",
    "red,    red,    proper,  proper",
    "gold,   red,    festive, none",
    "silver, red,    festive, none",
    "green,  green,  proper,  proper",
    "gold,   green,  festive, none",
    "silver, green,  festive, none",
    "gold,   violet, none,    none",
    "silver, violet, none,    none",
    "rose,   violet, none,    none",
    "violet, violet, proper,  proper",
    "violet, rose,   none,    none",
    "rose,   rose,   proper,  proper",
    "gold,   rose,   none,    none",
    "silver, rose,   none,    none",
    "black,  black,  proper,  proper",
    "gold,   black,  none,    none",
    "silver, black,  none,    none",
    "gold,   gold,   proper,  proper",
    "white,  gold,   none,    none"
  })
  void a_piece_serves_by_the_norm(String piece, String wanted, String onFeast, String otherwise) {
    List<Colour> colours = List.of(colour(piece));

    assertEquals(match(onFeast), ColourMatch.of(colours, colour(wanted), true));
    assertEquals(match(otherwise), ColourMatch.of(colours, colour(wanted), false));
  }

  /** The list of a piece says what it may serve as; RS 127 still keeps gold from violet. */
  @ParameterizedTest(name = "a piece of {0} serves {1}: {2}")
  @CsvSource({
    "white red,   red,    proper",
    "red white,   white,  proper",
    "white gold,  red,    none",
    "gold red,    red,    proper",
    "gold violet, violet, none",
    "silver black, black, none",
    "violet black, black, proper"
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
