package vestiary.exchange;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Keeps the file that somebody sent, for that person, until they have said what is in it. */
@ApplicationScoped
class SendList {

  /** What is not brought in by then was forgotten by whoever sent it. */
  static final Duration KEPT = Duration.ofHours(24);

  /** After that so much has been built on it that nobody wants it undone. */
  static final Duration UNDOABLE = Duration.ofDays(30);

  /** More than one or two are left over by mistake only. */
  private static final int MOST_A_PERSON = 5;

  private static final int LONGEST_NAME = 200;

  private final ImportRows rows;
  private final ImportFileRows files;
  private final CurrentVisitor visitor;
  private final ImportChanges changes;
  private final Clock clock;

  SendList(
      ImportRows rows,
      ImportFileRows files,
      CurrentVisitor visitor,
      ImportChanges changes,
      Clock clock) {
    this.changes = changes;
    this.rows = rows;
    this.files = files;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Keeps it; of the person's older files only the newest few stay.
   *
   * @param what which list, or calendar
   * @param lines how many there are in it
   * @return id of the import
   */
  @Transactional
  UUID keep(String what, String fileName, byte[] file, int lines) {
    forgetOld();
    String mine = visitor.visitor().mark();
    rows.idle(mine).stream().skip(MOST_A_PERSON - 1L).forEach(rows::delete);
    ImportRow row = begin(what, fileName, lines);
    ImportFileRow kept = new ImportFileRow();
    kept.id = row.id;
    kept.body = file;
    kept.expiresAt = clock.instant().plus(KEPT);
    files.persist(kept);
    return row.id;
  }

  /** An import without a file, which is brought in at once. */
  ImportRow begin(String what, String fileName, int lines) {
    ImportRow row = new ImportRow();
    row.what = what;
    row.fileName = fileName.length() > LONGEST_NAME ? "" : fileName;
    row.visitor = visitor.visitor().mark();
    row.sentAt = clock.instant();
    row.lines = lines;
    rows.persistAndFlush(row);
    return row;
  }

  /**
   * The file that the visitor sent.
   *
   * @throws Refused if it is another's, or is forgotten
   */
  @Transactional
  ImportFileRow mine(ImportRow row) {
    return files
        .findByIdOptional(row.id)
        .filter(file -> isMine(row))
        .orElseThrow(
            () -> new Refused(new Refusal.NotThere("file of an import", row.id.toString())));
  }

  boolean isMine(ImportRow row) {
    return row.visitor.equals(visitor.visitor().mark());
  }

  /**
   * Forgets the files that nobody went on with, what came of trying them, and how to undo what is
   * long done.
   */
  @Transactional
  void forgetOld() {
    Instant now = clock.instant();
    files.deleteExpired(now);
    rows.deleteIdleBefore(now.minus(KEPT));
    changes.forgetDoneBefore(now.minus(UNDOABLE));
  }

  /** Those of others are seen by nobody. */
  List<ImportRow> myIdle() {
    return rows.idle(visitor.visitor().mark());
  }
}
