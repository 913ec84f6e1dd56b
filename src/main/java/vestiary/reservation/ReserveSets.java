package vestiary.reservation;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.KeepHeld;
import vestiary.problem.RaceLost;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.schedule.SaveMass;
import vestiary.web.Speech;

/**
 * Sets vestments aside for a Mass: all that is asked for or none of it, in one transaction. Their
 * pieces are locked first, in order of their codes, and then looked at; so of two who want one
 * piece the second finds it held, and two who want several in another order do not wait for each
 * other. Should anything pass that by, the database refuses two times of one piece that overlap.
 */
@ApplicationScoped
class ReserveSets {

  private static final int TRIES = 3;
  private static final int MOST = 200;

  private final ReadMasses masses;
  private final SaveMass schedule;
  private final ReadOffers offers;
  private final KeepHeld held;
  private final ReservationRows reservations;
  private final WishRows wishes;
  private final CurrentVisitor visitor;
  private final Clock clock;

  ReserveSets(
      ReadMasses masses,
      SaveMass schedule,
      ReadOffers offers,
      KeepHeld held,
      ReservationRows reservations,
      WishRows wishes,
      CurrentVisitor visitor,
      Clock clock) {
    this.masses = masses;
    this.schedule = schedule;
    this.offers = offers;
    this.held = held;
    this.reservations = reservations;
    this.wishes = wishes;
    this.visitor = visitor;
    this.clock = clock;
  }

  /** For which Mass. */
  sealed interface Occasion {

    /** Id of the Mass, which is entered if it is not yet. */
    String enter(SaveMass schedule);
  }

  /**
   * @param mass its id
   */
  record Scheduled(String mass) implements Occasion {
    @Override
    public String enter(SaveMass schedule) {
      return mass;
    }
  }

  /** One that is entered in the schedule in the same transaction. */
  record Unscheduled(SaveMass.Request mass) implements Occasion {
    @Override
    public String enter(SaveMass schedule) {
      return schedule.enter(mass);
    }
  }

  /**
   * What is to be set aside.
   *
   * @param sets codes of sets, each of which goes whole
   * @param pieces codes of pieces
   */
  record Request(Occasion occasion, List<String> sets, List<String> pieces) {
    Request {
      sets = List.copyOf(sets);
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * What came of it.
   *
   * @param ids of the reservations, in the order in which they were asked for
   */
  record Done(String mass, List<UUID> ids) {
    Done {
      ids = List.copyOf(ids);
    }
  }

  /**
   * Sets aside.
   *
   * @throws Refused if one of the things cannot be had, which says who has it, for what and until
   *     when; if the Mass is over, cancelled or not there, a code is unknown, or the church is none
   *     of the visitor's
   */
  Done reserve(Request request) {
    return tried(() -> keep(request));
  }

  /**
   * Sets aside again what was given up.
   *
   * @throws Refused if it cannot be had any more, or as {@link #reserve}
   */
  void restore(String id) {
    tried(
        () -> {
          keepAgain(id);
          return id;
        });
  }

  /**
   * Sets aside in the present transaction for somebody whose wish was granted.
   *
   * @param maker as the history knows whoever asked
   * @throws Refused if it cannot be had, or the Mass is over or cancelled
   */
  void keepFor(DatedMass mass, boolean isSet, KeepHeld.Named named, String maker) {
    refuseIfOver(mass);
    Asking asking = new Asking(isSet, named);
    held.lock(named.pieces());
    Offer found = free(offers.of(mass), List.of(asking)).get(0);
    ReservationRow row = fresh(mass, asking);
    row.madeBy = maker;
    reservations.persist(row);
    take(row, mass, found);
  }

  /** Whoever loses a race looks again, and is then told who won. */
  private <T> T tried(Supplier<T> deed) {
    for (int tries = 1; ; tries++) {
      try {
        return QuarkusTransaction.joiningExisting().call(deed::get);
      } catch (RuntimeException failure) {
        if (tries == TRIES || !RaceLost.isBehind(failure)) {
          throw failure;
        }
      }
    }
  }

  private Done keep(Request request) {
    List<Asking> asked = asked(request);
    DatedMass mass = masses.get(request.occasion().enter(schedule));
    refuseUnlessReservable(mass);
    held.lock(asked.stream().flatMap(one -> one.named().pieces().stream()).distinct().toList());
    List<Offer> found = free(offers.of(mass), asked);
    List<UUID> ids = new ArrayList<>();
    for (int at = 0; at < asked.size(); at++) {
      ReservationRow row = fresh(mass, asked.get(at));
      reservations.persist(row);
      ids.add(row.id);
      take(row, mass, found.get(at));
      wishes.fulfil(row, clock.instant());
    }
    return new Done(mass.id().value().toString(), ids);
  }

  private void keepAgain(String id) {
    ReservationRow row = reservations.getLocked(id);
    DatedMass mass = masses.get(row.massId.toString());
    refuseUnlessReservable(mass);
    if (row.toState() != ReservationState.RELEASED) {
      throw new Refused(
          new Refusal.Taken(
              "", say("This is not given up any more. Nothing was changed; look again.")));
    }
    Asking again = asking(row);
    takeAgain(row, mass, again);
  }

  private Asking asking(ReservationRow row) {
    String code = held.codes().get(row.thing());
    return row.setId == null
        ? new Asking(false, held.piece(code))
        : new Asking(true, held.set(code));
  }

  /**
   * Lets what is held follow its Mass to another hour or church, in the present transaction; what
   * cannot be had then is given up, so that the week says what is short.
   */
  void follow(ReservationRow row, DatedMass mass) {
    try {
      takeAgain(row, mass, asking(row));
    } catch (Refused taken) {
      row.state = ReservationState.RELEASED.id();
    }
  }

  private void takeAgain(ReservationRow row, DatedMass mass, Asking again) {
    held.lock(again.named().pieces());
    Offer found = free(offers.of(mass), List.of(again)).get(0);
    row.state = ReservationState.HELD.id();
    row.churchId = mass.church().id().value();
    reservations.flush();
    take(row, mass, found);
  }

  private void take(ReservationRow row, DatedMass mass, Offer offer) {
    held.displace(offer.displaced());
    held.shorten(offer.free().stream().flatMap(one -> one.shortened().stream()).toList());
    reservations.flush();
    held.hold(
        offer.free().stream()
            .map(
                one ->
                    new KeepHeld.Held(
                        row.id,
                        one.piece(),
                        mass.id(),
                        mass.church().id(),
                        one.from(),
                        one.until()))
            .toList());
  }

  private record Asking(boolean isSet, KeepHeld.Named named) {}

  private List<Asking> asked(Request request) {
    List<Asking> asked =
        Stream.concat(
                request.sets().stream().map(code -> new Asking(true, held.set(code))),
                request.pieces().stream().map(code -> new Asking(false, held.piece(code))))
            .distinct()
            .toList();
    if (asked.isEmpty()) {
      throw new Refused(Refusal.Unfit.of("set", say("Say which set or piece is to be set aside.")));
    }
    if (asked.size() > MOST) {
      throw new Refused(
          Refusal.Unfit.of("set", say("More than %d at once; do it in parts.", MOST)));
    }
    refuseTwice(asked);
    return asked;
  }

  private static void refuseTwice(List<Asking> asked) {
    Set<String> seen = new HashSet<>();
    asked.stream()
        .flatMap(one -> one.named().pieces().stream())
        .filter(piece -> !seen.add(piece))
        .findFirst()
        .ifPresent(
            piece -> {
              throw new Refused(
                  Refusal.Unfit.of(
                      "piece", say("%s is named twice, by itself and with its set.", piece)));
            });
  }

  private void refuseUnlessReservable(DatedMass mass) {
    visitor.refuseOutsideOwn(Action.SET_ASIDE, mass.church().id().value());
    refuseIfOver(mass);
  }

  private void refuseIfOver(DatedMass mass) {
    if (mass.chosen().cancelled()) {
      throw against(say("This Mass is cancelled. Put it back first; nothing was set aside."));
    }
    if (!mass.end().toInstant().isAfter(clock.instant())) {
      throw against(
          say(
              "This Mass was over on %s at %s; nothing can be set aside for it any more.",
              Speech.dateAndYear(mass.date()), Speech.clock(mass.end())));
    }
  }

  private static Refused against(String sentence) {
    return new Refused(new Refusal.AgainstRule("mass", sentence));
  }

  /** All of them, if all can be had. */
  private static List<Offer> free(Offers offers, List<Asking> asked) {
    List<Offer> found =
        asked.stream()
            .map(
                one ->
                    one.isSet()
                        ? offers.get(one.named().code(), true)
                        : offers.piece(one.named().code()))
            .toList();
    found.stream()
        .filter(offer -> !offer.isFree())
        .findFirst()
        .ifPresent(
            offer -> {
              throw new Refused(new KeptWords(offers).refusal(offer));
            });
    return found;
  }

  private ReservationRow fresh(DatedMass mass, Asking asked) {
    ReservationRow row = new ReservationRow();
    row.massId = mass.id().value();
    row.churchId = mass.church().id().value();
    if (asked.isSet()) {
      row.setId = asked.named().id();
    } else {
      row.pieceId = asked.named().id();
    }
    row.madeBy = visitor.visitor().mark();
    row.madeAt = clock.instant();
    return row;
  }
}
