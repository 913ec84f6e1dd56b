package vestiary.calendar;

import static vestiary.calendar.Permissions.noMassOn;
import static vestiary.calendar.Permissions.permitted;
import static vestiary.calendar.Permissions.refused;
import static vestiary.calendar.Permissions.withLeave;

import java.util.Set;

/**
 * When a scrutiny of those who prepare for baptism is held, with its own Mass: the third, fourth
 * and fifth Sundays of Lent, in need another day of Lent, never a solemnity. Sunday 8 March 2026 is
 * the first of them. Source: Rite of Christian Initiation of Adults 146; GIRM 372.
 */
final class ScrutinyPermissions {

  private static final String SOURCE = "Rite of Christian Initiation of Adults 146; GIRM 372";
  private static final Set<String> SUNDAYS =
      Set.of("third-sunday-of-lent", "fourth-sunday-of-lent", "fifth-sunday-of-lent");

  private ScrutinyPermissions() {}

  static Permission of(Day day, Leave leave) {
    if (TriduumPermissions.isWithoutMass(day)) return noMassOn(day);
    if (SUNDAYS.contains(day.kept().id())) {
      return permitted(Sentence.of("This is a Sunday of the scrutinies."), SOURCE);
    }
    boolean inLent = day.season() == Season.LENT && day.week() >= 1 && day.week() < 6;
    if (inLent && day.kept().rank() != Rank.SOLEMNITY) {
      return leave == Leave.NONE
          ? refused(
              Sentence.of(
                  "A scrutiny is held on the third, fourth or fifth Sunday of Lent, unless a pastoral need asks for this day."),
              SOURCE)
          : withLeave(Sentence.of("It is held here because a pastoral need asks for it."), SOURCE);
    }
    return refused(
        Sentence.of(
            "A scrutiny is held on the third, fourth or fifth Sunday of Lent; here the Mass of the day is said."),
        SOURCE);
  }
}
