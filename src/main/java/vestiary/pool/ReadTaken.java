package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/** What is planned, held, out and carried in the cluster. */
@ApplicationScoped
public class ReadTaken {

  private final OccupationRows occupations;
  private final MovementRows movements;

  ReadTaken(OccupationRows occupations, MovementRows movements) {
    this.occupations = occupations;
    this.movements = movements;
  }

  /** What stands in some part of the half-open span; read in one query. */
  public Taken between(Instant from, Instant to) {
    List<PlannedWear> planned = new ArrayList<>();
    List<SetAside> setAside = new ArrayList<>();
    for (OccupationRows.Coded found : occupations.takenBetween(from, to)) {
      if (found.row().isPlanned()) {
        planned.add(planned(found));
      } else {
        setAside.add(setAside(found));
      }
    }
    return new Taken(planned, setAside);
  }

  /** The planned carriages that arrive in the half-open span, by the hour of leaving. */
  public List<CarriedPiece> carriedBetween(Instant from, Instant to) {
    return movements.wantedBetween(from, to);
  }

  static PlannedWear planned(OccupationRows.Coded found) {
    OccupationRow row = found.row();
    Role role = Term.find(Role.class, row.role).orElseThrow();
    return new PlannedWear(
        found.code(),
        new Wearer(new MassId(row.massId), role, row.ordinal),
        new ChurchId(row.churchId),
        row.depth,
        row.starts,
        row.ends);
  }

  private static SetAside setAside(OccupationRows.Coded found) {
    OccupationRow row = found.row();
    return new SetAside(
        found.code(),
        Stream.ofNullable(row.churchId).map(ChurchId::new).toList(),
        Stream.ofNullable(row.massId).map(MassId::new).toList(),
        row.starts,
        row.ends == null ? Instant.MAX : row.ends,
        row.state);
  }
}
