package vestiary.movement;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.cluster.Church;
import vestiary.plan.PlanResult;
import vestiary.pool.OutPiece;
import vestiary.pool.OutPieces;
import vestiary.pool.PooledPiece;
import vestiary.pool.ReadPool;
import vestiary.pool.TakeHome;
import vestiary.problem.Refused;
import vestiary.sending.FindItem;
import vestiary.sending.Item;
import vestiary.sending.SendOut;
import vestiary.sending.TakeIn;
import vestiary.vesting.ChurchId;

/** One press for all that rides on a journey: gone, or home. */
@ApplicationScoped
class SendRiding {

  /** Earlier nobody has loaded the car yet. */
  private static final Duration BEFORE = Duration.ofDays(1);

  private final ReadErrands errands;
  private final ReadPool pool;
  private final OutPieces out;
  private final FindItem items;
  private final SendOut send;
  private final TakeIn take;
  private final TakeHome home;
  private final Clock clock;

  SendRiding(
      ReadErrands errands,
      ReadPool pool,
      OutPieces out,
      FindItem items,
      SendOut send,
      TakeIn take,
      TakeHome home,
      Clock clock) {
    this.errands = errands;
    this.pool = pool;
    this.out = out;
    this.items = items;
    this.send = send;
    this.take = take;
    this.home = home;
    this.clock = clock;
  }

  /** Which presses there are, in words. */
  @Transactional
  MovementView.Riding offered(ReadErrands.Found found) {
    if (found.findErrand().isEmpty()) {
      return MovementView.Riding.NONE;
    }
    PlanResult.Trip trip = found.errands().get(0).trip();
    boolean soon = trip.leaveBy().minus(BEFORE).isBefore(clock.instant());
    return new MovementView.Riding(
        soon && !leaving(trip).isEmpty() ? say("They are gone") : "",
        soon && !homing(trip).isEmpty() ? say("They are home") : "");
  }

  /**
   * All that goes on from home is out, for what it is planned for there.
   *
   * @throws Refused if one of them cannot go; then none is gone
   */
  @Transactional
  void gone(String id) {
    ReadErrands.Found found = errands.get(id);
    Errand errand = found.needed();
    Church to = found.churches().get(new ChurchId(errand.trip().to()));
    bySet(leaving(errand.trip()))
        .forEach(
            (item, pieces) ->
                send.send(
                    item,
                    new SendOut.Request(
                        to.slug(),
                        null,
                        null,
                        null,
                        errand.driver(),
                        null,
                        null,
                        besides(item, pieces),
                        null)));
  }

  /**
   * All that comes home on it is there.
   *
   * @throws Refused if something of it changed meanwhile
   */
  @Transactional
  void home(String id) {
    PlanResult.Trip trip = errands.get(id).needed().trip();
    Set<String> outside = out.all().stream().map(OutPiece::piece).collect(Collectors.toSet());
    List<PooledPiece> coming = homing(trip);
    bySet(coming.stream().filter(piece -> outside.contains(piece.code())).toList())
        .forEach(
            (item, pieces) ->
                take.take(item, new TakeIn.Request(null, null, null, besides(item, pieces))));
    List<String> lying =
        coming.stream().map(PooledPiece::code).filter(code -> !outside.contains(code)).toList();
    if (!lying.isEmpty()) {
      home.take(new TakeHome.Request(lying));
    }
  }

  private List<PooledPiece> leaving(PlanResult.Trip trip) {
    Set<String> outside = out.all().stream().map(OutPiece::piece).collect(Collectors.toSet());
    return riding(trip).stream()
        .filter(piece -> !piece.home().value().equals(trip.to()))
        .filter(piece -> !outside.contains(piece.code()))
        .toList();
  }

  private List<PooledPiece> homing(PlanResult.Trip trip) {
    return riding(trip).stream().filter(piece -> piece.home().value().equals(trip.to())).toList();
  }

  private List<PooledPiece> riding(PlanResult.Trip trip) {
    return pool.pieces(clock.instant()).stream()
        .filter(piece -> trip.pieces().contains(piece.code()))
        .toList();
  }

  private Map<Item, List<String>> bySet(List<PooledPiece> pieces) {
    Map<String, List<String>> codes =
        pieces.stream()
            .collect(
                Collectors.groupingBy(
                    piece -> piece.set().isEmpty() ? piece.code() : piece.set(),
                    TreeMap::new,
                    Collectors.mapping(PooledPiece::code, Collectors.toList())));
    return codes.entrySet().stream()
        .collect(
            Collectors.toMap(
                set -> items.find(set.getKey()).orElseThrow(),
                Map.Entry::getValue,
                (first, second) -> first,
                LinkedHashMap::new));
  }

  private static List<String> besides(Item item, List<String> pieces) {
    return item.codes().stream().filter(code -> !pieces.contains(code)).toList();
  }
}
