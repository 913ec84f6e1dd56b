package vestiary.pool;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.ChurchId;

/** Somebody who passed has taken pieces home, or they were found there. */
@ApplicationScoped
public class TakeHome {

  private static final String WHOEVER = "somebody who passed";

  /** Where no journey is known; common practice, no source. */
  private static final Duration USUAL = Duration.ofMinutes(30);

  private final ReadTaken taken;
  private final OutPieces out;
  private final MovementRows movements;
  private final PieceRows pieces;
  private final ReadCluster cluster;
  private final Clock clock;

  TakeHome(
      ReadTaken taken,
      OutPieces out,
      MovementRows movements,
      PieceRows pieces,
      ReadCluster cluster,
      Clock clock) {
    this.taken = taken;
    this.out = out;
    this.movements = movements;
    this.pieces = pieces;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * Which pieces.
   *
   * @param pieces codes, one or more
   */
  public record Request(List<String> pieces) {}

  /**
   * Notes that pieces are home by now; of one that is there already nothing is changed.
   *
   * @throws Refused if no piece is named, there is none of a code, or one is out, whose return is
   *     noted by itself
   */
  @Transactional
  public void take(Request request) {
    Asked asked = new Asked();
    if (request.pieces() == null || request.pieces().isEmpty()) {
      asked.fault("pieces", say("Say which pieces were taken home."));
    }
    asked.refuseIfFaulty();
    Map<String, UUID> ids =
        request.pieces().stream()
            .distinct()
            .map(pieces::getByCode)
            .collect(Collectors.toMap(piece -> piece.code, piece -> piece.id));
    refuseIfOut(ids);
    Instant now = clock.instant();
    taken.awayFromHome(now).stream()
        .filter(astray -> ids.containsKey(astray.piece()))
        .forEach(astray -> movements.persist(row(astray, ids.get(astray.piece()), now)));
  }

  private void refuseIfOut(Map<String, UUID> ids) {
    out.all().stream()
        .map(OutPiece::piece)
        .filter(ids::containsKey)
        .findFirst()
        .ifPresent(
            code -> {
              throw new Refused(
                  new Refusal.Taken(
                      "",
                      say(
                          "%s is out. Say on its own page that it is back; nothing was changed.",
                          code)));
            });
  }

  private MovementRow row(Astray astray, UUID piece, Instant now) {
    MovementRow row = new MovementRow();
    row.pieceId = piece;
    row.fromId = astray.church().value();
    row.toId = astray.home().value();
    row.leaveBy = now.minus(time(astray.church(), astray.home()));
    row.arriveBy = now;
    row.carrier = WHOEVER;
    row.done = true;
    row.tripId = TripId.of(astray.church(), astray.home(), row.leaveBy, row.arriveBy, row.carrier);
    return row;
  }

  private Duration time(ChurchId from, ChurchId to) {
    return cluster.journeys().stream()
        .filter(journey -> journey.from().equals(from) && journey.to().equals(to))
        .map(journey -> Duration.ofMinutes(journey.minutes()))
        .findFirst()
        .orElse(USUAL);
  }
}
