package vestiary.lending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentCluster;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Yes, no, not after all, and back again: each said by the side whose it is to say. */
@ApplicationScoped
public class AnswerOffer {

  private static final int LONGEST = 1_000;

  private final LendingRows rows;
  private final ReadCluster cluster;
  private final CurrentCluster current;
  private final Clock clock;

  AnswerOffer(LendingRows rows, ReadCluster cluster, CurrentCluster current, Clock clock) {
    this.rows = rows;
    this.cluster = cluster;
    this.current = current;
    this.clock = clock;
  }

  /**
   * Takes what is offered: from now on it is in our pool for the time, and not in the lender's.
   *
   * @param church short name of the church where it is to lie
   * @throws Refused if it is not offered to us any more, a piece is taken, or there is no such
   *     church
   */
  @Transactional
  public void accept(String id, String church, String answer) {
    LendingRow row = offered(id, true);
    Asked asked = new Asked();
    row.answer = asked.text("answer", answer, LONGEST);
    String slug = asked.needed("church", church, LONGEST);
    Optional<Church> found = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (found.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", say("church \"%s\" is no church of this cluster.", slug));
    }
    asked.refuseIfFaulty();
    if (!row.ends.isAfter(clock.instant())) {
      throw taken(
          say("The time for which this was offered is over. Ask the lender for a new offer."));
    }
    row.churchId = found.orElseThrow().id().value();
    answer(row, LendingState.ACCEPTED);
  }

  /**
   * Does not take it.
   *
   * @throws Refused if it is not offered to us any more
   */
  @Transactional
  public void decline(String id, String answer) {
    LendingRow row = offered(id, true);
    Asked asked = new Asked();
    row.answer = asked.text("answer", answer, LONGEST);
    asked.refuseIfFaulty();
    answer(row, LendingState.DECLINED);
  }

  /**
   * Takes our own offer back.
   *
   * @throws Refused if it was answered meanwhile, or is another's
   */
  @Transactional
  public void withdraw(String id) {
    answer(offered(id, false), LendingState.WITHDRAWN);
  }

  /**
   * Says that the pieces are back with the lender: they are gone from the one pool and free in the
   * other.
   *
   * @param ending how they came back; may be empty
   * @throws Refused if they are not lent
   */
  @Transactional
  public void giveBack(String id, String ending) {
    LendingRow row = rows.getLocked(id, current.id());
    refuseUnless(
        row.toState() == LendingState.ACCEPTED, say("These pieces are not lent any more."));
    Asked asked = new Asked();
    row.ending = asked.text("ending", ending, LONGEST);
    asked.refuseIfFaulty();
    giveBack(row);
  }

  /** Ends whatever the present cluster has lent or borrowed, for a demo that is made anew. */
  @Transactional
  public void endAll() {
    UUID here = current.id();
    for (LendingRow row : rows.of(here)) {
      if (row.toState() == LendingState.ACCEPTED) {
        giveBack(row);
      } else if (row.toState() == LendingState.OFFERED && row.clusterId.equals(here)) {
        answer(row, LendingState.WITHDRAWN);
      }
    }
  }

  private void giveBack(LendingRow row) {
    row.state = LendingState.RETURNED.id();
    row.endedAt = clock.instant();
    row.endedBy = current.id();
    rows.flush();
  }

  private LendingRow offered(String id, boolean toUs) {
    LendingRow row = rows.getLocked(id, current.id());
    boolean isOurs = (toUs ? row.borrowerId : row.clusterId).equals(current.id());
    refuseUnless(
        isOurs,
        toUs
            ? say("This is your own offer; the other cluster answers it.")
            : say("This was offered to you; it is for the lender to take it back."));
    refuseUnless(
        row.toState() == LendingState.OFFERED, say("This was answered or taken back meanwhile."));
    return row;
  }

  private void answer(LendingRow row, LendingState state) {
    row.state = state.id();
    row.answeredAt = clock.instant();
    rows.flush();
  }

  private static void refuseUnless(boolean is, String sentence) {
    if (!is) {
      throw taken(sentence + say(" Nothing was changed; look again."));
    }
  }

  private static Refused taken(String sentence) {
    return new Refused(new Refusal.Taken("", sentence));
  }
}
