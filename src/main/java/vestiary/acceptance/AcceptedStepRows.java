package vestiary.acceptance;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import vestiary.vesting.MassId;

@ApplicationScoped
class AcceptedStepRows implements PanacheRepositoryBase<AcceptedStepRow, UUID> {

  /** Those of these Masses, by role, number and kind. */
  List<AcceptedStepRow> of(Collection<MassId> masses) {
    return masses.isEmpty()
        ? List.of()
        : list(
            "massId in ?1 order by massId, role, ordinal, kind",
            masses.stream().map(MassId::value).toList());
  }

  void delete(AcceptedStep one) {
    delete(
        "massId = ?1 and role = ?2 and ordinal = ?3 and kind = ?4",
        one.wearer().mass().value(),
        one.wearer().role().id(),
        one.wearer().ordinal(),
        one.kind().id());
  }
}
