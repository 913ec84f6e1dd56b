package vestiary.sending;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.people.SavePerson;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;
import vestiary.pool.Standing;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** A set or a piece goes out: to another church, to a Mass, or to somebody outside. */
@ApplicationScoped
public class SendOut {

  private static final int LONGEST_NAME = 200;
  private static final int LONGEST_CONDITION = 300;

  /** Beyond that nobody has planned or holds. */
  private static final Duration AHEAD = Duration.ofDays(31);

  private final OutPieces out;
  private final MayGo may;
  private final ReadCluster cluster;
  private final ReadDestination destinations;
  private final SavePerson people;
  private final KeepSent keep;
  private final CurrentVisitor visitor;
  private final Clock clock;

  SendOut(
      OutPieces out,
      MayGo may,
      ReadCluster cluster,
      ReadDestination destinations,
      SavePerson people,
      KeepSent keep,
      CurrentVisitor visitor,
      Clock clock) {
    this.out = out;
    this.may = may;
    this.cluster = cluster;
    this.destinations = destinations;
    this.people = people;
    this.keep = keep;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What was said; what is {@code null} or blank was not.
   *
   * @param church short name of the church it goes to
   * @param whom who gets it outside the cluster
   * @param due when it is to be back: a date, or a date and time; not said: as is usual
   * @param mass id of the Mass it goes for
   * @param carrier who carries it
   * @param signer who signs for it there
   * @param without codes of pieces that do not go along
   * @param ownersAsked whether owners who want to be asked have said yes
   */
  public record Request(
      String church,
      String whom,
      String due,
      String mass,
      String carrier,
      String signer,
      String condition,
      List<String> without,
      Boolean ownersAsked) {

    public Request {
      without = without == null ? List.of() : without.stream().filter(Objects::nonNull).toList();
    }

    /** To a Mass, everything else as is usual. */
    public static Request toMass(String mass) {
      return new Request(null, null, null, mass, null, null, null, null, null);
    }
  }

  /**
   * Sends it out from now on. What is planned for it meanwhile is displaced, and what it goes for
   * it becomes.
   *
   * @return the id of the sending
   * @throws Refused if a field is unfit, an owner or somebody else has something against it, or it
   *     is out already
   */
  @Transactional
  public UUID send(Item item, Request request) {
    Asked asked = new Asked();
    Instant now = clock.instant();
    Destination to = destinations.read(request, asked);
    List<PooledPiece> going = going(item, request.without(), asked);
    Optional<Instant> said = due(now).find(request.due(), asked);
    SendingRow row = row(item, request, asked);
    asked.refuseIfFaulty();
    Map<String, UUID> ids = out.lock(going.stream().map(PooledPiece::code).sorted().toList());
    List<Standing> ahead = out.standing(ids.keySet(), now, now.plus(AHEAD));
    Destination meant = destinations.becoming(to, ahead, said.orElse(now.plus(AHEAD)));
    Instant due = said.orElseGet(() -> due(now).usual(meant.masses().stream().findFirst(), ahead));
    may.check(going, meant, Boolean.TRUE.equals(request.ownersAsked()), asked);
    asked.refuseIfFaulty();
    may.refuseIfTaken(
        out.standing(ids.keySet(), now, due), meant, item.isSet() && item.pieces().size() > 1);
    row.wentAt = now;
    row.due = due;
    row.sentBy = visitor.visitor().mark();
    return keep.keep(row, meant, going, ids);
  }

  private DueBack due(Instant now) {
    return new DueBack(now, cluster.cluster().zone());
  }

  private static List<PooledPiece> going(Item item, List<String> without, Asked asked) {
    List<PooledPiece> going = new ArrayList<>(item.pieces());
    for (String code : without) {
      if (!going.removeIf(piece -> piece.code().equalsIgnoreCase(code.strip()))) {
        asked.fault("without", say("%s is no piece of %s.", code, item.code()));
      }
    }
    if (going.isEmpty()) {
      asked.fault("without", say("Nothing is left that goes out."));
    }
    return going;
  }

  private SendingRow row(Item item, Request request, Asked asked) {
    SendingRow row = new SendingRow();
    row.item = item.code();
    row.condition = asked.text("condition", request.condition(), LONGEST_CONDITION);
    String carrier = asked.text("carrier", request.carrier(), LONGEST_NAME);
    String signer = asked.text("signer", request.signer(), LONGEST_NAME);
    asked.refuseIfFaulty();
    row.carrierId = carrier.isEmpty() ? null : people.carrying(carrier).id();
    row.signerId = signer.isEmpty() ? null : people.carrying(signer).id();
    return row;
  }
}
