package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.SavePerson;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;
import vestiary.pool.Standing;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** What is out already when a cluster begins to write it down. */
@ApplicationScoped
@Transactional
public class BringSent {

  private static final int LONGEST = 300;

  private final FindItem items;
  private final OutPieces out;
  private final KeepSent keep;
  private final ReadCluster cluster;
  private final SavePerson people;
  private final SendingRows sendings;
  private final SentPieceRows sent;
  private final Clock clock;

  BringSent(
      FindItem items,
      OutPieces out,
      KeepSent keep,
      ReadCluster cluster,
      SavePerson people,
      SendingRows sendings,
      SentPieceRows sent,
      Clock clock) {
    this.items = items;
    this.out = out;
    this.keep = keep;
    this.cluster = cluster;
    this.people = people;
    this.sendings = sendings;
    this.sent = sent;
    this.clock = clock;
  }

  /**
   * As a list says it.
   *
   * @param piece code of the piece; empty if a set is meant
   * @param set code of the set; empty if a piece is meant
   * @param church short name of the church where it is; empty outside the cluster
   * @param whom who has it outside the cluster; else empty
   * @param from day on which it went
   * @param due last day on which it may come back
   * @param carrier who carried it; may be empty
   * @param condition in which it went; may be empty
   */
  public record Request(
      String piece,
      String set,
      String church,
      String whom,
      LocalDate from,
      LocalDate due,
      String carrier,
      String condition) {}

  /** What is wrong with it; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    asked.text("whom", request.whom(), LONGEST);
    asked.text("carrier", request.carrier(), LONGEST);
    asked.text("condition", request.condition(), LONGEST);
    if (!request.church().isEmpty() && cluster.findChurch(request.church()).isEmpty()) {
      asked.fault("church", say("church \"%s\" is not in the cluster.", request.church()));
    }
    if (went(request).isAfter(clock.instant())) {
      asked.fault("from", say("It has not gone yet on %s.", request.from()));
    }
    Optional<Item> item = find(request);
    if (item.isEmpty()) {
      boolean isSet = request.piece().isEmpty();
      asked.fault(
          isSet ? "set" : "piece",
          say(
              "%s \"%s\" is not in the pool.",
              isSet ? "set" : "piece", request.piece() + request.set()));
    }
    item.flatMap(found -> findTaken(found, request))
        .ifPresent(
            taken ->
                asked.fault(
                    "from",
                    say("%s is %s then; say first that it is back.", taken.piece(), word(taken))));
    return asked.faults();
  }

  private static String word(Standing taken) {
    return switch (taken.state()) {
      case OUT -> say("out");
      case CARE -> say("in care (%s)", taken.reason());
      default -> say("held");
    };
  }

  /** What stands in the way; the same time out, brought in once more, does not. */
  private Optional<Standing> findTaken(Item item, Request request) {
    return out.standing(item.codes(), went(request), due(request)).stream()
        .filter(one -> one.state() != Standing.State.PLANNED)
        .filter(one -> !(one.state() == Standing.State.OUT && one.from().equals(went(request))))
        .findFirst();
  }

  /**
   * Notes that it is out, or changes what was noted of the same time out; so a list can be sent
   * twice.
   *
   * @throws Refused if there is no such piece or set, or it is taken
   */
  public void enterOrChange(Request request) {
    Asked asked = new Asked();
    asked.add(findFaults(request));
    asked.refuseIfFaulty();
    Item item = find(request).orElseThrow();
    Map<String, UUID> ids = out.lock(item.codes().stream().sorted().toList());
    forgetSame(item, went(request));
    SendingRow row = new SendingRow();
    row.item = item.code();
    row.wentAt = went(request);
    row.due = due(request);
    row.condition = request.condition().strip();
    row.carrierId =
        request.carrier().isBlank() ? null : people.carrying(request.carrier().strip()).id();
    List<Church> church = cluster.findChurch(request.church()).stream().toList();
    List<PooledPiece> pieces = item.pieces();
    keep.keep(row, new Destination(church, request.whom().strip(), List.of()), pieces, ids);
  }

  /** Forgets all that ever went out, for a demo that is made anew. */
  public void forgetAll() {
    keep.forgetAll();
  }

  private void forgetSame(Item item, Instant went) {
    List<UUID> occupations =
        out.all().stream()
            .filter(one -> item.codes().contains(one.piece()) && one.from().equals(went))
            .map(one -> one.id())
            .toList();
    sent.ofOccupations(occupations).stream()
        .map(row -> row.sendingId)
        .distinct()
        .forEach(id -> keep.forget(sendings.findById(id), sent.ofSending(id)));
  }

  private Optional<Item> find(Request request) {
    try {
      return Optional.of(
          request.piece().isEmpty()
              ? items.getSet(request.set())
              : items.getPiece(request.piece()));
    } catch (Refused notThere) {
      return Optional.empty();
    }
  }

  private Instant went(Request request) {
    return request.from().atStartOfDay(zone()).toInstant();
  }

  private Instant due(Request request) {
    return request.due().plusDays(1).atStartOfDay(zone()).toInstant();
  }

  private ZoneId zone() {
    return cluster.cluster().zone();
  }
}
