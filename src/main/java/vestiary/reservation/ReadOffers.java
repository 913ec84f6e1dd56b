package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.Consent;
import vestiary.pool.KeepHeld;
import vestiary.pool.ReadConsents;
import vestiary.pool.SetAside;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/** Looks through the whole cluster for what can be had for a Mass. */
@ApplicationScoped
class ReadOffers {

  private final CheckClashes check;
  private final ReadConsents consents;
  private final ReservationRows reservations;
  private final KeepHeld held;
  private final MakerNames makers;
  private final Clock clock;

  ReadOffers(
      CheckClashes check,
      ReadConsents consents,
      ReservationRows reservations,
      KeepHeld held,
      MakerNames makers,
      Clock clock) {
    this.check = check;
    this.consents = consents;
    this.reservations = reservations;
    this.held = held;
    this.makers = makers;
    this.clock = clock;
  }

  /** What can be had, as things stand. */
  @Transactional
  Offers of(DatedMass mass) {
    SpanToCheck span = check.load(mass.date(), mass.date());
    Set<String> granted =
        consents.ofMasses(List.of(mass.id())).stream()
            .filter(Consent::granted)
            .map(Consent::piece)
            .collect(Collectors.toSet());
    return of(mass, isIn(span, mass) ? span : with(span, mass), granted);
  }

  private Offers of(DatedMass mass, SpanToCheck span, Set<String> granted) {
    JudgePieces judge = new JudgePieces(span, mass, granted, clock.instant());
    List<Offer> all =
        Reservable.of(span.pieces()).stream()
            .map(thing -> new Offer(thing, thing.pieces().stream().map(judge::judge).toList()))
            .toList();
    return new Offers(span, mass, judge.window(), all, holders(span));
  }

  private static boolean isIn(SpanToCheck span, DatedMass mass) {
    return span.masses().stream().anyMatch(one -> one.id().equals(mass.id()));
  }

  /** A Mass that is not in the schedule yet, as if it were. */
  private static SpanToCheck with(SpanToCheck span, DatedMass mass) {
    List<DatedMass> more = new ArrayList<>(span.masses());
    more.add(mass);
    return span.with(more, span.taken(), span.accepted());
  }

  private Map<Offers.Holding, String> holders(SpanToCheck span) {
    Set<MassId> masses =
        span.taken().setAside().stream()
            .map(SetAside::masses)
            .flatMap(List::stream)
            .collect(Collectors.toSet());
    if (masses.isEmpty()) {
      return Map.of();
    }
    Map<UUID, String> codes = held.codes();
    MakerNames.Names names = makers.all();
    Map<Offers.Holding, String> holders = new HashMap<>();
    for (ReservationRow row : reservations.standingFor(masses)) {
      String code = codes.get(row.thing());
      holders.put(new Offers.Holding(code, new MassId(row.massId)), names.of(row.madeBy));
    }
    return holders;
  }
}
