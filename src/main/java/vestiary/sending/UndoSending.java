package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.pool.ComeBack;
import vestiary.pool.OutPieces;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Takes back the last that was said of a sending, within the hour in which it was said. */
@ApplicationScoped
public class UndoSending {

  /** Later it is history, and corrected by what is said next. */
  public static final Duration WITHIN = Duration.ofHours(1);

  private final OutPieces out;
  private final ComeBack back;
  private final KeepSent keep;
  private final SendingRows sendings;
  private final SentPieceRows sent;
  private final Clock clock;

  UndoSending(
      OutPieces out,
      ComeBack back,
      KeepSent keep,
      SendingRows sendings,
      SentPieceRows sent,
      Clock clock) {
    this.keep = keep;
    this.out = out;
    this.back = back;
    this.sendings = sendings;
    this.sent = sent;
    this.clock = clock;
  }

  /** What is taken back. */
  public enum Act {
    OUT,
    BACK
  }

  /**
   * Takes it back.
   *
   * @param id of the sending
   * @param act what the person saw and takes back
   * @throws Refused if there is no such sending, it was said too long ago, or something else was
   *     said since
   */
  @Transactional
  public void undo(String id, Act act) {
    UUID sought = Asked.id("sending", id);
    out.lock(sent.ofSending(sought).stream().map(row -> row.code).toList());
    List<SentPieceRow> pieces = sent.ofSending(sought);
    SendingRow sending = sendings.findById(sought);
    if (sending == null || pieces.isEmpty()) {
      throw new Refused(new Refusal.NotThere("sending", id));
    }
    // What was read before the lock may have been changed until it was had.
    pieces.forEach(sent.getEntityManager()::refresh);
    if (act == Act.OUT) {
      undoOut(sending, pieces);
    } else {
      undoBack(sending, pieces);
    }
  }

  private void undoOut(SendingRow sending, List<SentPieceRow> pieces) {
    refuseUnless(pieces.stream().allMatch(row -> row.backAt == null));
    refuseIfOld(sending.wentAt);
    keep.forget(sending, pieces);
  }

  private void undoBack(SendingRow sending, List<SentPieceRow> pieces) {
    Instant last =
        pieces.stream()
            .filter(row -> row.backAt != null)
            .map(row -> row.backAt)
            .max(Comparator.naturalOrder())
            .orElse(Instant.EPOCH);
    refuseUnless(last.isAfter(Instant.EPOCH));
    refuseIfOld(last);
    pieces.stream().filter(row -> last.equals(row.backAt)).forEach(row -> undoBack(sending, row));
    sent.flush();
  }

  private void undoBack(SendingRow sending, SentPieceRow row) {
    back.forget(
        row.occupationId,
        sending.due,
        new ComeBack.Come(Arrays.asList(row.displaced), Optional.ofNullable(row.movementId)));
    row.backAt = null;
    row.backId = null;
    row.takerId = null;
    row.takenInBy = "";
    row.conditionBack = "";
    row.movementId = null;
  }

  private static void refuseUnless(boolean lastAct) {
    if (!lastAct) {
      throw new Refused(
          new Refusal.Taken(
              "", say("Something else was said of it since; nothing was changed. Look again.")));
    }
  }

  private void refuseIfOld(Instant said) {
    if (said.isBefore(clock.instant().minus(WITHIN))) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "That was said more than an hour ago and stands. Say what is true now: out, or back.")));
    }
  }
}
