package vestiary.calendar;

/**
 * A memorial on a weekday that stands above it: the Mass is of the day, in the day's colour, and
 * only the collect may be the saint's. Polycarp on 23 February 2026, in Lent, is violet. Source:
 * GIRM 355 a; the colour by GIRM 347, since no norm words it.
 */
final class Commemorations {

  private static final String SOURCE = "GIRM 355 a; UNLY 16 b";

  private Commemorations() {}

  static Celebration of(Entry memorial, Celebration weekday) {
    return new Celebration(
        memorial.id(),
        memorial.celebration().name(),
        Rank.COMMEMORATION,
        Precedence.OPTIONAL_MEMORIAL,
        weekday.colours(),
        SOURCE,
        weekday.colourReason());
  }
}
