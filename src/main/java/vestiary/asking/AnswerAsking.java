package vestiary.asking;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.UUID;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** What comes of an asking: yes, no, carried, taken back. */
@ApplicationScoped
public class AnswerAsking {

  private static final int LONGEST_NAME = 200;

  private final AskingRows askings;
  private final ReadAskings read;
  private final AskingWords words;
  private final Clock clock;

  AnswerAsking(AskingRows askings, ReadAskings read, AskingWords words, Clock clock) {
    this.askings = askings;
    this.read = read;
    this.words = words;
    this.clock = clock;
  }

  /**
   * What was pressed.
   *
   * @param by who pressed; left out: the one who was asked
   * @param version that was seen; left out: whatever it is
   */
  public record Request(String by, Integer version) {}

  /**
   * Changes the state of whoever is asked for the trip; a yes that is said already changes nothing.
   *
   * @throws Refused if nobody is asked, or it was answered otherwise meanwhile, or said no already
   */
  @Transactional
  public Asking change(UUID trip, AskingState state, Request request) {
    Asked asked = new Asked();
    String by = asked.text("by", request.by(), LONGEST_NAME);
    asked.refuseIfFaulty();
    AskingRow row = askings.findOpenLocked(trip).orElseThrow(() -> nobody(trip));
    Asking before = now(trip, row);
    boolean seen = request.version() == null || request.version() == row.version;
    if (row.state() == state && seen) {
      return before;
    }
    if (!seen || !state.mayFollow(row.state())) {
      throw taken(words.lately(before) + say(" Look again before you answer."));
    }
    row.state = state.id();
    row.changedBy = by.isEmpty() ? before.name() : by;
    row.changedAt = clock.instant();
    askings.flush();
    return now(trip, row);
  }

  /** Notes which plan was made after a refusal. */
  @Transactional
  public void offer(UUID trip, Asking declined, UUID plan) {
    askings.ofTrip(trip).stream()
        .filter(row -> row.personId != null && declined.person().contains(row.personId))
        .filter(row -> row.state() == AskingState.DECLINED)
        .forEach(row -> row.offered = plan);
  }

  /**
   * Notes that he is written to: once, however often that is asked.
   *
   * @return whether it may
   */
  @Transactional
  public boolean claimMail(UUID trip) {
    AskingRow row = askings.findOpenLocked(trip).orElse(null);
    if (row == null || row.state() != AskingState.ASKED || row.mailedAt != null) {
      return false;
    }
    row.mailedAt = clock.instant();
    return true;
  }

  private Asking now(UUID trip, AskingRow row) {
    Instant asked = row.askedAt;
    return read.ofTrip(trip).stream()
        .filter(one -> one.askedAt().equals(asked) && one.state() == row.state())
        .findFirst()
        .orElseThrow();
  }

  private Refused nobody(UUID trip) {
    return read.ofTrip(trip).stream()
        .reduce((first, second) -> second)
        .map(last -> taken(words.lately(last)))
        .orElseGet(
            () -> taken(say("Nobody was asked to carry this yet. Ask somebody by name first.")));
  }

  private static Refused taken(String sentence) {
    return new Refused(new Refusal.Taken("", sentence));
  }
}
