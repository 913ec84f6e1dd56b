package vestiary.calendar;

import java.time.MonthDay;
import java.util.Objects;

/**
 * What one church adds to the calendar of its place: its title and the day it was dedicated. Both
 * are solemnities there and nowhere else.
 *
 * <p>A church of Saint Bartholomew keeps him on Sunday 24 August 2025, in red, while its neighbours
 * keep the Twenty-first Sunday in green. Source: UNLY 52 c, 59 I.4.
 */
public sealed interface Proper {

  /** A title that the calendar of the place already has, by the id of that celebration. */
  record Titular(String celebration) implements Proper {
    public Titular {
      if (celebration.isBlank()) throw new IllegalArgumentException("A titular needs an id.");
    }
  }

  /** A title that the calendar of the place does not have; never gold or silver. */
  record OwnTitular(LocalName name, MonthDay day, Colour colour) implements Proper {
    public OwnTitular {
      Objects.requireNonNull(name);
      Objects.requireNonNull(day);
      if (colour == Colour.GOLD || colour == Colour.SILVER) {
        throw new IllegalArgumentException("A title is kept in a colour, not in gold or silver.");
      }
    }
  }

  /** The yearly day of the church's own dedication. */
  record Dedication(MonthDay day) implements Proper {
    public Dedication {
      Objects.requireNonNull(day);
    }
  }
}
