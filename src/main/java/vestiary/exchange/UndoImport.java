package vestiary.exchange;

import static vestiary.web.Speech.word;

import jakarta.enterprise.context.ApplicationScoped;
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

  private final ImportRows rows;
  private final OneByOne turns;
  private final NameHindrances naming;
  private final SavePattern patterns;
  private final CurrentVisitor visitor;
  private final ImportChanges changes;
  private final Clock clock;

  UndoImport(
      ImportRows rows,
      OneByOne turns,
      NameHindrances naming,
      SavePattern patterns,
      CurrentVisitor visitor,
      ImportChanges changes,
      Clock clock) {
    this.rows = rows;
    this.turns = turns;
    this.naming = naming;
    this.patterns = patterns;
    this.visitor = visitor;
    this.changes = changes;
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
    rows.getEntityManager().refresh(row);
    if (row.state() == ImportState.UNDONE) {
      return;
    }
    if (row.state() != ImportState.DONE || !isKept(row.id)) {
      throw new Refused(
          new Refusal.AgainstRule(
              "id",
              word("What this import changed is not kept any more, so that it cannot be undone.")));
    }
    refuseIfHindered(row.id);
    List<UUID> changed = changes.changedPatterns(row.id);
    changes.putBack(row.id);
    changed.forEach(pattern -> patterns.yieldAgain(pattern, row.reached));
    ImportRow undone = rows.getLocked(id);
    undone.become(ImportState.UNDONE);
    undone.undoneAt = clock.instant();
    undone.undoneBy = visitor.visitor().mark();
  }

  /** Whether it can be undone, as far as can be told without trying. */
  boolean isKept(UUID id) {
    return changes.isKept(id);
  }

  private void refuseIfHindered(UUID id) {
    Optional<String> sentence = naming.sentence(changes.hindrances(id));
    if (sentence.isPresent()) {
      throw new Refused(new Refusal.AgainstRule("id", sentence.get()));
    }
  }
}
