package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/** What is there for single Masses, and for whom. */
@ApplicationScoped
@Transactional
public class ReadLaid {

  private final OccupationRows occupations;

  ReadLaid(OccupationRows occupations) {
    this.occupations = occupations;
  }

  /** All that is planned, held or out for these Masses, by start, then code. */
  public List<LaidPiece> of(Collection<MassId> masses) {
    return masses.isEmpty()
        ? List.of()
        : occupations.standingFor(masses).stream().map(ReadLaid::laid).toList();
  }

  private static LaidPiece laid(OccupationRows.Coded found) {
    OccupationRow row = found.row();
    MassId mass = new MassId(row.massId);
    return new LaidPiece(
        found.code(),
        mass,
        Stream.ofNullable(row.role)
            .flatMap(role -> Term.find(Role.class, role).stream())
            .map(role -> new Wearer(mass, role, row.ordinal))
            .toList(),
        row.state,
        row.starts,
        row.ends == null ? Instant.MAX : row.ends);
  }
}
