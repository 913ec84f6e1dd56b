package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.OneByOne;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.SavePattern;

/**
 * Puts everything back that an import entered and changed: all of it, or nothing if anything of it
 * was changed since or is needed by something that was entered since.
 */
@ApplicationScoped
class UndoImport {

  private static final int AT_A_TIME = 2_000;

  private final ImportRows rows;
  private final OneByOne turns;
  private final NameHindrances naming;
  private final SavePattern patterns;
  private final CurrentVisitor visitor;
  private final EntityManager database;
  private final Clock clock;

  UndoImport(
      ImportRows rows,
      OneByOne turns,
      NameHindrances naming,
      SavePattern patterns,
      CurrentVisitor visitor,
      EntityManager database,
      Clock clock) {
    this.rows = rows;
    this.turns = turns;
    this.naming = naming;
    this.patterns = patterns;
    this.visitor = visitor;
    this.database = database;
    this.clock = clock;
  }

  /**
   * Undoes it; once that is done, doing it again changes nothing.
   *
   * @throws Refused if there is no such import, it was never brought in, or something stands
   *     against it, which is named
   */
  @Transactional
  void undo(String id) {
    turns.waitForTurn();
    ImportRow row = rows.getLocked(id);
    database.refresh(row);
    if (row.state() == ImportState.UNDONE) {
      return;
    }
    if (row.state() != ImportState.DONE || !isKept(row.id)) {
      throw new Refused(
          new Refusal.AgainstRule(
              "id", "What this import changed is not kept any more, so that it cannot be undone."));
    }
    refuseIfHindered(row.id);
    List<UUID> changed = changedPatterns(row.id);
    while (putBack(row.id) > 0) {
      // The rest is put back in the same transaction.
    }
    database.clear();
    changed.forEach(pattern -> patterns.yieldAgain(pattern, row.reached));
    ImportRow undone = rows.getLocked(id);
    undone.become(ImportState.UNDONE);
    undone.undoneAt = clock.instant();
    undone.undoneBy = visitor.visitor().mark();
  }

  /** How many changes are left to be put back. */
  private long putBack(UUID id) {
    return ((Number)
            database
                .createNativeQuery("select undo_import(?1, ?2)")
                .setParameter(1, id)
                .setParameter(2, AT_A_TIME)
                .getSingleResult())
        .longValue();
  }

  /** Whether it can be undone, as far as can be told without trying. */
  boolean isKept(UUID id) {
    return !database
        .createNativeQuery("select 1 from import_change where import_id = ?1 limit 1")
        .setParameter(1, id)
        .getResultList()
        .isEmpty();
  }

  private void refuseIfHindered(UUID id) {
    List<?> found =
        database
            .createNativeQuery("select kind, line::text from undo_hindrances(?1)")
            .setParameter(1, id)
            .getResultList();
    Optional<String> sentence = naming.sentence(found.stream().map(Object[].class::cast).toList());
    if (sentence.isPresent()) {
      throw new Refused(new Refusal.AgainstRule("id", sentence.get()));
    }
  }

  private List<UUID> changedPatterns(UUID id) {
    return database
        .createNativeQuery(
            "select distinct row_id from import_change"
                + " where import_id = ?1 and kind = 'pattern' and before is not null",
            UUID.class)
        .setParameter(1, id)
        .getResultList()
        .stream()
        .map(UUID.class::cast)
        .toList();
  }
}
