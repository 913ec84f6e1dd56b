package vestiary.reservation;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

@ApplicationScoped
class ReservationRows implements PanacheRepositoryBase<ReservationRow, UUID> {

  private static final String WHAT = "reservation";

  /**
   * The one that an address names.
   *
   * @throws Refused if there is none
   */
  ReservationRow get(String id) {
    return findByIdOptional(Asked.id(WHAT, id)).orElseThrow(() -> notThere(id));
  }

  /** The same; waits until nobody else changes it. */
  ReservationRow getLocked(String id) {
    return find("id = ?1", Asked.id(WHAT, id))
        .withLock(LockModeType.PESSIMISTIC_WRITE)
        .firstResultOptional()
        .orElseThrow(() -> notThere(id));
  }

  /** Those that stand for these Masses, the first made first. */
  List<ReservationRow> standingFor(Collection<MassId> masses) {
    return masses.isEmpty()
        ? List.of()
        : list(
            "massId in ?1 and state in ('held', 'out') order by madeAt, id",
            masses.stream().map(MassId::value).toList());
  }

  private static Refused notThere(String id) {
    return new Refused(new Refusal.NotThere(WHAT, id));
  }
}
