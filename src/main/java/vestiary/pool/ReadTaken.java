package vestiary.pool;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Lying;
import vestiary.calendar.Term;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;
import vestiary.vesting.Wearer;

/** What is planned, held, out and carried in the cluster. */
@ApplicationScoped
@Transactional
public class ReadTaken {

  private final OccupationRows occupations;
  private final MovementRows movements;
  private final PieceRows pieces;
  private final SetRows setRows;
  private final Clock clock;

  ReadTaken(
      OccupationRows occupations,
      MovementRows movements,
      PieceRows pieces,
      SetRows setRows,
      Clock clock) {
    this.clock = clock;
    this.occupations = occupations;
    this.movements = movements;
    this.pieces = pieces;
    this.setRows = setRows;
  }

  /**
   * What stands in some part of the half-open span; read in one query. What is out and overdue is
   * out until somebody says that it is back.
   */
  public Taken between(Instant from, Instant to) {
    Instant now = clock.instant();
    List<PlannedWear> planned = new ArrayList<>();
    List<SetAside> setAside = new ArrayList<>();
    for (OccupationRows.Coded found : occupations.takenBetween(from, to)) {
      if (found.row().isPlanned()) {
        planned.add(planned(found));
      } else {
        setAside.add(setAside(found, now));
      }
    }
    return new Taken(planned, setAside);
  }

  /** What is planned, held or out for these Masses and stands, whenever they are. */
  public Taken forMasses(Collection<MassId> masses) {
    Instant now = clock.instant();
    List<OccupationRows.Coded> found =
        masses.isEmpty() ? List.of() : occupations.standingFor(masses);
    return new Taken(
        found.stream().filter(one -> one.row().isPlanned()).map(ReadTaken::planned).toList(),
        found.stream()
            .filter(one -> !one.row().isPlanned())
            .map(one -> setAside(one, now))
            .toList());
  }

  /**
   * Where pieces lie at any moment of the half-open span: each where it was last, until it is
   * carried on or taken home; what is in care, or back from it, is at home.
   */
  public Lying lying(Instant from, Instant to) {
    return Whereabouts.toLying(
        Stream.concat(movements.stops(from, to).stream(), occupations.stops(from, to).stream())
            .toList());
  }

  /** The pieces that lie away from home at a moment; what is out comes back by itself. */
  public List<Astray> awayFromHome(Instant moment) {
    Lying known = lying(moment, moment.plusSeconds(1));
    Map<UUID, String> sets =
        setRows.streamAll().collect(Collectors.toMap(set -> set.id, set -> set.code));
    Set<UUID> out =
        occupations.awaited().stream()
            .filter(found -> found.row().isDuring(moment, moment.plusSeconds(1), clock.instant()))
            .map(found -> found.row().pieceId)
            .collect(Collectors.toSet());
    return pieces.byCode().stream()
        .filter(piece -> !piece.staysHome && !out.contains(piece.id))
        .map(piece -> astray(piece, known, moment, sets))
        .filter(astray -> !astray.church().equals(astray.home()))
        .sorted(Comparator.comparing(Astray::piece))
        .toList();
  }

  private static Astray astray(
      PieceRow piece, Lying known, Instant moment, Map<UUID, String> sets) {
    ChurchId home = new ChurchId(piece.homeId);
    String set = piece.setId == null ? "" : sets.get(piece.setId);
    return new Astray(piece.code, set, known.church(piece.code, home, moment), home);
  }

  /** The planned carriages that arrive in the half-open span, by the hour of leaving. */
  public List<CarriedPiece> carriedBetween(Instant from, Instant to) {
    return movements.wantedBetween(from, to);
  }

  /** What rides on one trip, by code; empty if no plan that holds has it any more. */
  public List<CarriedPiece> carriedOn(UUID trip) {
    return movements.wantedOn(trip);
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

  private static SetAside setAside(OccupationRows.Coded found, Instant now) {
    OccupationRow row = found.row();
    return new SetAside(
        found.code(),
        Stream.ofNullable(row.churchId).map(ChurchId::new).toList(),
        Stream.ofNullable(row.massId).map(MassId::new).toList(),
        row.starts,
        row.until(now),
        row.state);
  }
}
