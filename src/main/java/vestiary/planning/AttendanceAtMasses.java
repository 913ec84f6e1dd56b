package vestiary.planning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import vestiary.people.Attendance;
import vestiary.people.ReadAbsences;
import vestiary.schedule.DatedMass;

/** Who is away while Masses are celebrated, for whoever has these and no span of days. */
@ApplicationScoped
public class AttendanceAtMasses {

  private static final Attendance NOTHING_ASKED = new Attendance(List.of(), List.of(), List.of());

  private final ReadAbsences absences;

  AttendanceAtMasses(ReadAbsences absences) {
    this.absences = absences;
  }

  /** From the first of them to the end of the last; they may be in any order. */
  @Transactional
  public Attendance of(Collection<DatedMass> masses) {
    if (masses.isEmpty()) {
      return NOTHING_ASKED;
    }
    return absences.attendance(
        masses.stream().map(mass -> mass.start().toInstant()).min(Instant::compareTo).get(),
        masses.stream().map(mass -> mass.end().toInstant()).max(Instant::compareTo).get());
  }
}
