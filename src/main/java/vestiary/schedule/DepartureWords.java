package vestiary.schedule;

import java.time.ZonedDateTime;
import vestiary.cluster.Church;
import vestiary.web.English;

/** Tells whoever comes at the usual hour that a Mass is not said then, and where to go instead. */
public final class DepartureWords {

  private DepartureWords() {}

  /**
   * For example "No Mass at 10:30; join us at Holy Trinity at 11:00." or "Not at 10:30 but at
   * 11:00."; empty for a Mass that is as usual.
   */
  public static String of(DatedMass mass) {
    String usual = English.clock(mass.usual().start());
    if (mass.isCancelled()) {
      return mass.findTakenOver()
          .map(
              other ->
                  "No Mass at %s; join us at %s."
                      .formatted(usual, where(other.church(), other.start(), mass.usual())))
          .orElse("No Mass at %s.".formatted(usual));
    }
    return mass.isMoved()
        ? "Not at %s but %s.".formatted(usual, hour(mass.church(), mass.start(), mass.usual()))
        : "";
  }

  private static String where(Church church, ZonedDateTime start, Usual usual) {
    String here = church.id().equals(usual.church().id()) ? "this church" : church.name();
    return here + " " + when(start, usual);
  }

  private static String hour(Church church, ZonedDateTime start, Usual usual) {
    return church.id().equals(usual.church().id())
        ? when(start, usual)
        : when(start, usual) + " in " + church.name();
  }

  private static String when(ZonedDateTime start, Usual usual) {
    boolean sameDay = start.toLocalDate().equals(usual.start().toLocalDate());
    return sameDay
        ? "at " + English.clock(start)
        : "on %s at %s".formatted(English.day(start.toLocalDate()), English.clock(start));
  }
}
