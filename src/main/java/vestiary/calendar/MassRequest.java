package vestiary.calendar;

import java.time.LocalTime;
import java.util.Objects;

/**
 * The Mass that is asked about.
 *
 * @param votiveOf what a votive or needs Mass is of, or empty
 */
record MassRequest(LocalTime start, MassKind kind, String votiveOf, Leave leave) {

  MassRequest {
    Objects.requireNonNull(start);
    Objects.requireNonNull(kind);
    Objects.requireNonNull(votiveOf);
    Objects.requireNonNull(leave);
  }

  MassColumn column() {
    return MassColumn.of(kind, leave);
  }

  /** Whether a sacrament or rite brings a Mass of its own. */
  boolean isRitual() {
    return !kind.isOfTheDays() && column() == MassColumn.RITUAL;
  }

  boolean isBeforeNoon() {
    return start.isBefore(LocalTime.NOON);
  }

  boolean isVotive() {
    return kind == MassKind.VOTIVE;
  }
}
