package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** What is lent or borrowed is changed by its lending alone, so that both clusters see the same. */
@ApplicationScoped
class LentPieces {

  private final OccupationRows occupations;

  LentPieces(OccupationRows occupations) {
    this.occupations = occupations;
  }

  /**
   * A piece of another cluster is described by that one.
   *
   * @throws Refused if the piece is borrowed
   */
  static void refuseIfBorrowed(PieceRow piece) {
    if (piece.lendingId != null) {
      throw borrowed(piece.code);
    }
  }

  /**
   * The same of a set.
   *
   * @throws Refused if the set is borrowed
   */
  static void refuseIfBorrowed(SetRow set) {
    if (set.lendingId != null) {
      throw borrowed(set.code);
    }
  }

  /**
   * What is in another cluster's pool, or with somebody else, cannot leave ours for good.
   *
   * @throws Refused if the piece is lent or out, and not back
   */
  void refuseIfLent(PieceRow piece) {
    if (occupations.count("pieceId = ?1 and lendingId is not null", piece.id) > 0) {
      throw new Refused(
          new Refusal.Taken(
              "", say("%s is lent to another cluster; it must be back first.", piece.code)));
    }
    if (!occupations.awaitedOf(List.of(piece.id)).isEmpty()) {
      throw new Refused(
          new Refusal.Taken(
              "", say("%s is out; say that it is back first, wherever it is.", piece.code)));
    }
  }

  /**
   * When a lending begins and ends is said where it is kept.
   *
   * @throws Refused if that care is one
   */
  static void refuseIfOfLending(OccupationRow care, PieceRow piece) {
    if (care.lendingId != null) {
      throw new Refused(
          new Refusal.Taken(
              "from",
              say(
                  "%s is %s by a lending. Say under Lent and borrowed that it is back.",
                  piece.code, piece.lendingId == null ? "away" : say("here only"))));
    }
  }

  private static Refused borrowed(String code) {
    return new Refused(
        new Refusal.Taken(
            "",
            say(
                "%s is borrowed from another cluster, which alone changes what is said of it. Under Lent and borrowed it can be given back.",
                code)));
  }
}
