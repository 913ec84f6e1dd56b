package vestiary.exchange;

import io.quarkus.hibernate.orm.panache.PanacheRepositoryBase;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** What imports changed, which the database writes down and puts back (migration V074). */
@ApplicationScoped
class ImportChanges implements PanacheRepositoryBase<ImportChangeRow, UUID> {

  private static final int AT_A_TIME = 2_000;

  /** From now on what this transaction changes is written down as that import's. */
  void keepFor(UUID of) {
    set("app.import", of.toString());
  }

  /** From now on what this transaction changes was changed by that person. */
  void actAs(String visitor) {
    set("app.visitor", visitor);
  }

  /** Forgets what came about beside the list; how many changes are left. */
  long settle(UUID of) {
    flush();
    return ask("settle_import", of, Long.class);
  }

  /** What stands against undoing it: table and row of each, as JSON. */
  String hindrances(UUID of) {
    return ask("undo_hindrances_said", of, String.class);
  }

  /** Puts everything back; what was read before in this transaction is not so any more. */
  void putBack(UUID of) {
    long left = 1;
    while (left > 0) {
      left =
          getEntityManager()
              .createQuery("select cast(function('undo_import', ?1, ?2) as Long)", Long.class)
              .setParameter(1, of)
              .setParameter(2, AT_A_TIME)
              .getSingleResult();
    }
    getEntityManager().clear();
  }

  /** Whether it can be undone, as far as can be told without trying. */
  boolean isKept(UUID of) {
    return count("importId", of) > 0;
  }

  /** Mass times that it changed and did not enter. */
  List<UUID> changedPatterns(UUID of) {
    return find("importId = ?1 and kind = 'pattern' and before is not null", of)
        .<ImportChangeRow>list()
        .stream()
        .map(change -> change.rowId)
        .distinct()
        .toList();
  }

  void forgetDoneBefore(Instant moment) {
    delete("importId in (select i.id from ImportRow i where i.doneAt < ?1)", moment);
  }

  private void set(String name, String value) {
    getEntityManager()
        .createQuery("select cast(function('set_config', ?1, ?2, true) as String)", String.class)
        .setParameter(1, name)
        .setParameter(2, value)
        .getSingleResult();
  }

  private <T> T ask(String function, UUID of, Class<T> type) {
    return getEntityManager()
        .createQuery(
            "select cast(function('%s', ?1) as %s)".formatted(function, type.getSimpleName()), type)
        .setParameter(1, of)
        .getSingleResult();
  }
}
