package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.SavePerson;
import vestiary.pool.ComeBack;
import vestiary.pool.OutPiece;
import vestiary.pool.OutPieces;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;
import vestiary.web.Speech;

/** What was out is taken in again, at home or at another church. */
@ApplicationScoped
public class TakeIn {

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_CONDITION = 300;

  private final OutPieces out;
  private final ComeBack back;
  private final ReadCluster cluster;
  private final SavePerson people;
  private final SentPieceRows sent;
  private final CurrentVisitor visitor;
  private final Clock clock;

  TakeIn(
      OutPieces out,
      ComeBack back,
      ReadCluster cluster,
      SavePerson people,
      SentPieceRows sent,
      CurrentVisitor visitor,
      Clock clock) {
    this.out = out;
    this.back = back;
    this.cluster = cluster;
    this.people = people;
    this.sent = sent;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What was said; what is {@code null} or blank was not.
   *
   * @param church short name of the church where it is now; not said: its own
   * @param taker who takes it in
   * @param without codes of pieces that did not come along and are still out
   */
  public record Request(String church, String taker, String condition, List<String> without) {

    public Request {
      without = without == null ? List.of() : without.stream().filter(Objects::nonNull).toList();
    }

    /** At that church, everything else as is usual. */
    public static Request at(String church) {
      return new Request(church, null, null, null);
    }
  }

  /**
   * Takes in what of it is out; what is not stays where it is.
   *
   * @return codes of the pieces that came back
   * @throws Refused if a field is unfit, or nothing of it is out
   */
  @Transactional
  public List<String> take(Item item, Request request) {
    Asked asked = new Asked();
    ChurchId church = church(item, request.church(), asked);
    String taker = asked.text("taker", request.taker(), LONGEST_NAME);
    String condition = asked.text("condition", request.condition(), LONGEST_CONDITION);
    List<String> coming = coming(item, request.without(), asked);
    asked.refuseIfFaulty();
    out.lock(coming.stream().sorted().toList());
    List<OutPiece> awaited =
        out.all().stream().filter(one -> coming.contains(one.piece())).toList();
    refuseIfNothingIsOut(item, coming, awaited);
    UUID takerId = taker.isEmpty() ? null : people.carrying(taker).id();
    Instant now = clock.instant();
    for (OutPiece one : awaited) {
      ComeBack.Come come = back.back(one.id(), church, now);
      sent.ofOccupations(List.of(one.id()))
          .forEach(row -> fill(row, church, takerId, condition, come, now));
    }
    sent.flush();
    return awaited.stream().map(OutPiece::piece).sorted().toList();
  }

  private ChurchId church(Item item, String slug, Asked asked) {
    String typed = asked.text("church", slug, LONGEST_NAME);
    if (typed.isEmpty()) {
      return item.home();
    }
    Optional<Church> found = cluster.findChurch(typed);
    if (found.isEmpty()) {
      asked.fault("church", say("There is no church \"%s\" in this cluster.", typed));
    }
    return found.map(Church::id).orElse(item.home());
  }

  private static List<String> coming(Item item, List<String> without, Asked asked) {
    for (String code : without) {
      if (item.codes().stream().noneMatch(code.strip()::equalsIgnoreCase)) {
        asked.fault("without", say("%s is no piece of %s.", code, item.code()));
      }
    }
    List<String> left =
        item.codes().stream()
            .filter(code -> without.stream().map(String::strip).noneMatch(code::equalsIgnoreCase))
            .toList();
    if (left.isEmpty()) {
      asked.fault("without", say("Nothing is left that comes back."));
    }
    return left;
  }

  private static void refuseIfNothingIsOut(Item item, List<String> coming, List<OutPiece> awaited) {
    if (awaited.isEmpty()) {
      throw new Refused(
          new Refusal.Taken(
              "",
              say(
                  "%s is not out, so that it cannot come back. Somebody may have taken it in just now; look again.",
                  coming.size() == item.pieces().size() ? item.code() : Speech.list(coming))));
    }
  }

  private void fill(
      SentPieceRow row,
      ChurchId church,
      UUID taker,
      String condition,
      ComeBack.Come come,
      Instant now) {
    row.backAt = now;
    row.backId = church.value();
    row.takerId = taker;
    row.takenInBy = visitor.visitor().mark();
    row.conditionBack = condition;
    row.displaced =
        Stream.concat(Stream.of(row.displaced), come.displaced().stream()).toArray(UUID[]::new);
    row.movementId = come.movement().orElse(null);
  }
}
