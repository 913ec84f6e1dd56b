package vestiary.feed;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.people.Attendance;
import vestiary.planning.AttendanceAtMasses;
import vestiary.planning.RoleAt;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadStamped;
import vestiary.telling.Tongue;

/** The Masses of one person's calendar, with the ways between them. */
@ApplicationScoped
@Transactional
class OwnMasses {

  private final ReadCluster cluster;
  private final AttendanceAtMasses attendance;
  private final OwnJourneys journeys;
  private final StampEvents stamps;

  OwnMasses(
      ReadCluster cluster,
      AttendanceAtMasses attendance,
      OwnJourneys journeys,
      StampEvents stamps) {
    this.cluster = cluster;
    this.attendance = attendance;
    this.journeys = journeys;
    this.stamps = stamps;
  }

  /**
   * Those at which the person is named; where he is away he stays named, and does not drive there.
   *
   * @param all by start, cancelled ones included
   */
  Stream<CalendarEvent> of(UUID person, List<ReadStamped.Stamped> all, Tongue tongue) {
    List<ReadStamped.Stamped> theirs =
        all.stream().filter(one -> one.mass().isNamed(person)).toList();
    Attendance there = attendance.of(theirs.stream().map(ReadStamped.Stamped::mass).toList());
    MassEvents events = new MassEvents(cluster.cluster(), tongue);
    List<DatedMass> standing =
        theirs.stream()
            .map(ReadStamped.Stamped::mass)
            .filter(mass -> !mass.isCancelled())
            .filter(mass -> mass.people().stream().anyMatch(p -> p.id().equals(person)))
            .filter(mass -> !RoleAt.isAway(mass, person, there))
            .toList();
    return Stream.concat(
        stamps
            .countAway(
                theirs.stream().map(one -> events.ofPerson(one, person, there)).toList(), person)
            .stream(),
        journeys.drives(standing, tongue).stream());
  }
}
