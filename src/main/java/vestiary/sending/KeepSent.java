package vestiary.sending;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;

/** Keeps what goes out: the sending, its pieces, and the time in which each is away. */
@ApplicationScoped
class KeepSent {

  private final OutPieces out;
  private final SendingRows sendings;
  private final SentPieceRows sent;

  KeepSent(OutPieces out, SendingRows sendings, SentPieceRows sent) {
    this.out = out;
    this.sendings = sendings;
    this.sent = sent;
  }

  /**
   * Keeps it in the present transaction.
   *
   * @param row with all but where it goes filled in
   * @param ids of the pieces by code; they are locked
   * @return the id of the sending
   */
  @Transactional(Transactional.TxType.MANDATORY)
  UUID keep(SendingRow row, Destination to, List<PooledPiece> going, Map<String, UUID> ids) {
    row.churchId = to.churchIds().stream().findFirst().map(id -> id.value()).orElse(null);
    row.whom = to.whom();
    row.borrower = to.borrower();
    row.massId = to.massIds().stream().findFirst().map(id -> id.value()).orElse(null);
    sendings.persistAndFlush(row);
    OutPieces.Going how =
        new OutPieces.Going(to.churchIds(), to.massIds(), row.wentAt, row.due, row.whom);
    for (PooledPiece piece : going) {
      OutPieces.Gone gone = out.go(ids.get(piece.code()), how);
      SentPieceRow kept = new SentPieceRow();
      kept.sendingId = row.id;
      kept.pieceId = gone.piece();
      kept.code = piece.code();
      kept.what = WhatWent.kept(piece);
      kept.owner = piece.owner();
      kept.loan = to.isLoanOf(piece);
      kept.conditionOut = piece.condition();
      kept.occupationId = gone.occupation();
      kept.displaced = gone.displaced().toArray(UUID[]::new);
      sent.persist(kept);
    }
    sent.flush();
    return row.id;
  }

  /** As if it had never been said; what it displaced stands again where it still can. */
  @Transactional(Transactional.TxType.MANDATORY)
  void forget(SendingRow sending, List<SentPieceRow> pieces) {
    pieces.forEach(row -> out.forget(row.pieceId, row.occupationId, Arrays.asList(row.displaced)));
    pieces.forEach(sent::delete);
    sent.flush();
    sendings.delete(sending);
    sendings.flush();
  }

  /** Forgets all that ever went out, for a demo that is made anew. */
  @Transactional(Transactional.TxType.MANDATORY)
  void forgetAll() {
    sent.deleteAll();
    sendings.deleteAll();
  }
}
