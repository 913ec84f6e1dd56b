package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.MassId;

/**
 * Notes an owner's answer. After a no the pieces are not planned for that Mass any more, so that
 * the warning stands again until something else is found.
 */
@ApplicationScoped
public class NoteConsent {

  private final ConsentRows consents;
  private final PieceRows pieces;
  private final OccupationRows occupations;
  private final Clock clock;

  NoteConsent(ConsentRows consents, PieceRows pieces, OccupationRows occupations, Clock clock) {
    this.consents = consents;
    this.pieces = pieces;
    this.occupations = occupations;
    this.clock = clock;
  }

  /**
   * One answer for some pieces of one owner.
   *
   * @param codes of the pieces, one or more
   * @param by name typed by whoever notes it; may be empty
   * @param seen how often it had been answered when the page was looked at; negative: whatever
   */
  public record Answer(MassId mass, List<String> codes, boolean granted, String by, int seen) {
    public Answer {
      codes = List.copyOf(codes);
    }
  }

  /** How often these have been answered, for {@link Answer#seen}. */
  public static int times(List<Consent> consents) {
    return consents.stream().mapToInt(one -> one.version() + 1).sum();
  }

  /**
   * Notes the answer; once it is so, doing it again changes nothing.
   *
   * @throws Refused if it was answered since the page was looked at
   */
  @Transactional
  public void note(Answer answer) {
    Map<UUID, PieceRow> meant =
        pieces.list("code in ?1", answer.codes()).stream()
            .collect(Collectors.toMap(piece -> piece.id, Function.identity()));
    UUID mass = answer.mass().value();
    Map<UUID, ConsentRow> before =
        consents.ofMassLocked(mass, meant.keySet()).stream()
            .collect(Collectors.toMap(row -> row.pieceId, Function.identity()));
    int times = before.values().stream().mapToInt(row -> row.version + 1).sum();
    if (answer.seen() >= 0 && times != answer.seen()) {
      throw new Refused(new Refusal.Taken("", answeredSince(before.values().iterator().next())));
    }
    meant.keySet().forEach(id -> note(before.getOrDefault(id, fresh(mass, id)), answer));
    if (!answer.granted()) {
      occupations.unplan(mass, meant.keySet());
    }
    consents.flush();
  }

  private static ConsentRow fresh(UUID mass, UUID piece) {
    ConsentRow row = new ConsentRow();
    row.massId = mass;
    row.pieceId = piece;
    row.state = "";
    return row;
  }

  private void note(ConsentRow row, Answer answer) {
    String state = answer.granted() ? ConsentRow.GRANTED : ConsentRow.REFUSED;
    if (!row.state.equals(state)) {
      row.state = state;
      row.answeredBy = answer.by();
      row.answeredAt = clock.instant();
      consents.persist(row);
    }
  }

  private static String answeredSince(ConsentRow row) {
    return say(
        "The owner's %s was noted meanwhile%s. Look again before you answer.",
        row.state.equals(ConsentRow.GRANTED) ? "yes" : "no",
        row.answeredBy.isEmpty() ? "" : say(" by ") + row.answeredBy);
  }
}
