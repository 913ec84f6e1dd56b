package vestiary.calendar;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.Objects;

/**
 * What a church keeps beside the calendar of its country: its title and the day it was dedicated,
 * the celebrations of its diocese, place or order, and where its bishop has set a day elsewhere.
 *
 * <p>A church of Saint Bartholomew keeps him on Sunday 24 August 2025, in red, while its neighbours
 * keep the Twenty-first Sunday in green. Source: UNLY 49 to 60.
 */
public sealed interface Proper {

  /** A title that the calendar of the place already has, by the id of that celebration. */
  record Titular(String celebration) implements Proper {
    public Titular {
      named(celebration);
    }
  }

  /** A title that the calendar of the place does not have; never gold or silver. */
  record OwnTitular(LocalName name, MonthDay day, Colour colour) implements Proper {

    /** By which others name it, whichever church it is. */
    public static final String CELEBRATION = "titular-of-this-church";

    public OwnTitular {
      Objects.requireNonNull(name);
      Objects.requireNonNull(day);
      refuseMetal(colour);
    }
  }

  /** The yearly day of the church's own dedication. */
  record Dedication(MonthDay day) implements Proper {

    /** By which others name it, whichever church it is. */
    public static final String CELEBRATION = "dedication-of-this-church";

    public Dedication {
      Objects.requireNonNull(day);
    }
  }

  /**
   * A celebration that the calendar of the country does not have.
   *
   * @param celebration an id of its own, for example {@code our-lady-of-the-ford}
   * @param colour never gold or silver
   */
  record Inscribed(
      String celebration, LocalName name, MonthDay day, Colour colour, ProperPlace place)
      implements Proper {
    public Inscribed {
      named(celebration);
      Objects.requireNonNull(name);
      Objects.requireNonNull(day);
      refuseMetal(colour);
      Objects.requireNonNull(place);
    }
  }

  /** A celebration that the calendar has, kept on its day with another place in the table. */
  record Placed(String celebration, ProperPlace place) implements Proper {
    public Placed {
      named(celebration);
      Objects.requireNonNull(place);
    }
  }

  /** The same on another date than the calendar's, every year. */
  record Moved(String celebration, ProperPlace place, MonthDay day) implements Proper {
    public Moved {
      named(celebration);
      Objects.requireNonNull(place);
      Objects.requireNonNull(day);
    }
  }

  /**
   * A solemnity or feast of the Lord that is kept, for the good of the faithful, on a Sunday of
   * Ordinary Time of the same week. It stays on its day where that Sunday is not free for it, and
   * where the day obliges. Source: UNLY 58.
   */
  record OnSunday(String celebration, SundayBeside sunday) implements Proper {
    public OnSunday {
      named(celebration);
      Objects.requireNonNull(sunday);
    }
  }

  /** A celebration that, in the year of this date, is kept on it by decision of authority. */
  record KeptOn(String celebration, LocalDate date) implements Proper {
    public KeptOn {
      named(celebration);
      Objects.requireNonNull(date);
    }
  }

  private static void named(String celebration) {
    if (celebration.isBlank()) throw new IllegalArgumentException("A proper needs an id.");
  }

  private static void refuseMetal(Colour colour) {
    if (colour == Colour.GOLD || colour == Colour.SILVER) {
      throw new IllegalArgumentException("A day is kept in a colour, not in gold or silver.");
    }
  }
}
