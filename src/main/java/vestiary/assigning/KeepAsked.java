package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.allocation.celebrant.PriestId;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/**
 * Who was asked for where somebody else was named in his place. What was named by hand since counts
 * as asked for.
 */
@ApplicationScoped
class KeepAsked {

  private final AskedRows rows;

  KeepAsked(AskedRows rows) {
    this.rows = rows;
  }

  /** Of some Masses, where it is another than the one who is named. */
  @Transactional
  Map<MassId, PriestId> of(List<DatedMass> masses) {
    Map<MassId, PriestId> asked = new HashMap<>();
    for (AskedRow row : rows.listAll()) {
      masses.stream()
          .filter(mass -> mass.id().value().equals(row.id))
          .filter(mass -> mass.celebrants().stream().anyMatch(p -> p.id().equals(row.namedId)))
          .forEach(mass -> asked.put(mass.id(), new PriestId(row.askedId)));
    }
    return asked;
  }

  /**
   * Notes that somebody is named in the place of another; nothing if he is the one who was asked
   * for.
   *
   * @param before who was named until now
   */
  @Transactional(Transactional.TxType.MANDATORY)
  void note(UUID mass, UUID before, UUID named) {
    AskedRow row = rows.findById(mass);
    UUID asked = row != null && row.namedId.equals(before) ? row.askedId : before;
    if (row == null) {
      row = new AskedRow();
      row.id = mass;
    }
    row.askedId = asked;
    row.namedId = named;
    if (asked.equals(named)) {
      rows.deleteById(mass);
    } else {
      rows.persist(row);
    }
  }
}
