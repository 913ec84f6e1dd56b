package vestiary.norms;

import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ArbitrarySupplier;
import vestiary.calendar.Day;

/** A church of each calendar offered, with nothing of its own. */
final class Churches implements ArbitrarySupplier<ChurchOfFact> {

  @Override
  public Arbitrary<ChurchOfFact> get() {
    return Arbitraries.of("general", "us", "england", "wales", "ireland", "canada")
        .map(Churches::of);
  }

  static ChurchOfFact of(String calendar) {
    return new ChurchOfFact(calendar, "");
  }

  /** The days of a civil year, in order. */
  static List<Day> days(ChurchOfFact church, int year) {
    return church.liturgicalCalendar().days(LocalDate.of(year, 1, 1), LocalDate.of(year, 12, 31));
  }

  /** The days from one date to another, both included. */
  static List<Day> days(ChurchOfFact church, LocalDate first, LocalDate last) {
    return church.liturgicalCalendar().days(first, last);
  }

  /** The day of the year on which this celebration is kept. */
  static Day dayOf(String celebration, ChurchOfFact church, int year) {
    return days(church, year).stream()
        .filter(day -> day.kept().id().equals(celebration))
        .findFirst()
        .orElseThrow();
  }
}
