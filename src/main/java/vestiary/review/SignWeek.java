package vestiary.review;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Signs a week: that somebody looked at it as it stood. Nothing else changes; it says neither that
 * all is covered nor that what is on it is permitted.
 */
@ApplicationScoped
class SignWeek {

  private static final int LONGEST_NOTE = 2_000;

  private final ReadReview reviews;
  private final SignedWeekRows rows;
  private final CurrentVisitor visitor;
  private final Clock clock;

  SignWeek(ReadReview reviews, SignedWeekRows rows, CurrentVisitor visitor, Clock clock) {
    this.reviews = reviews;
    this.rows = rows;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What is sent to sign.
   *
   * @param note a word to the others; may be empty
   * @param seen fingerprint of the week that was looked at; empty from a program that signs it
   *     whatever it reads
   * @param turn of the last signature that was seen, 0 if there was none; {@code null} from such a
   *     program
   */
  record Request(String note, String seen, Integer turn) {}

  /**
   * Signs the week from that Monday.
   *
   * @throws Refused if the week was changed, or signed, since it was looked at
   */
  @Transactional
  Signature sign(LocalDate monday, Request request) {
    Asked asked = new Asked();
    String note = asked.text("note", request.note(), LONGEST_NOTE);
    String seen = asked.text("seen", request.seen());
    asked.refuseIfFaulty();
    Review review = reviews.of(monday);
    boolean isLate = request.turn() != null && request.turn() != review.turn();
    if (isLate || !seen.isEmpty() && !seen.equals(review.now().fingerprint())) {
      throw new Refused(new Refusal.Outdated("this week"));
    }
    SignedWeekRow row = new SignedWeekRow();
    row.monday = monday;
    row.turn = review.turn() + 1;
    row.signedAt = clock.instant();
    row.visitor = visitor.visitor().mark();
    row.note = note;
    row.week = review.now();
    rows.persistAndFlush(row);
    return review.reader().signature(row);
  }
}
