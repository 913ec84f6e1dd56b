package vestiary.schedule;

import static vestiary.web.Speech.say;

import java.time.ZonedDateTime;
import vestiary.cluster.Church;
import vestiary.web.Speech;

/** Tells whoever comes at the usual hour that a Mass is not said then, and where to go instead. */
public final class DepartureWords {

  private DepartureWords() {}

  /**
   * For example "No Mass at 10:30; join us at Holy Trinity at 11:00." or "Not at 10:30 but at
   * 11:00."; empty for a Mass that is as usual.
   */
  public static String of(DatedMass mass) {
    String usual = Speech.clock(mass.usual().start());
    if (mass.isCancelled()) {
      return mass.findTakenOver()
          .map(
              other ->
                  say(
                      "No Mass at %s; join us at %s.",
                      usual, where(other.church(), other.start(), mass.usual())))
          .orElse(say("No Mass at %s.", usual));
    }
    return mass.isMoved()
        ? say("Not at %s but %s.", usual, hour(mass.church(), mass.start(), mass.usual()))
        : "";
  }

  private static String where(Church church, ZonedDateTime start, Usual usual) {
    String here = church.id().equals(usual.church().id()) ? say("this church") : church.name();
    return here + " " + when(start, usual);
  }

  private static String hour(Church church, ZonedDateTime start, Usual usual) {
    return church.id().equals(usual.church().id())
        ? when(start, usual)
        : say("%s in %s", when(start, usual), church.name());
  }

  private static String when(ZonedDateTime start, Usual usual) {
    boolean sameDay = start.toLocalDate().equals(usual.start().toLocalDate());
    return sameDay
        ? say("at %s", Speech.clock(start))
        : say("on %s at %s", Speech.day(start.toLocalDate()), Speech.clock(start));
  }
}
