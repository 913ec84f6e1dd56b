package vestiary.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.asking.AskedTrip;
import vestiary.pool.Consent;
import vestiary.vesting.Away;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * The planner's question with what people have answered: who will not carry drives alone, and what
 * its owner keeps back lies at home while the Mass is that asked for it.
 */
final class Answered {

  private static final String NO = "its owner says no";

  private final Situation situation;
  private final Map<String, List<MassId>> keptBack;
  private final Map<MassId, List<Need>> needs;

  private Answered(Situation situation, Collection<Consent> refused) {
    this.situation = situation;
    this.keptBack =
        refused.stream()
            .collect(
                Collectors.groupingBy(
                    Consent::piece, Collectors.mapping(Consent::mass, Collectors.toList())));
    this.needs = situation.span().needs().stream().collect(Collectors.groupingBy(Need::mass));
  }

  /**
   * The question without these.
   *
   * @param declined trips that those who drive anyway will not carry for
   * @param refused answers of owners that are no
   */
  static Situation in(
      Situation situation, Collection<AskedTrip> declined, Collection<Consent> refused) {
    Situation driven =
        declined.isEmpty()
            ? situation
            : situation.withRides(
                situation.rides().stream().filter(ride -> !isDeclined(ride, declined)).toList());
    return refused.isEmpty() ? driven : new Answered(driven, refused).keptBack();
  }

  private static boolean isDeclined(Ride ride, Collection<AskedTrip> declined) {
    return declined.stream()
        .anyMatch(
            trip ->
                trip.rider().equals(ride.who())
                    && trip.from().equals(ride.from())
                    && trip.to().equals(ride.to())
                    && trip.leaveBy().equals(ride.departs()));
  }

  private Situation keptBack() {
    Span span = situation.span();
    return situation.with(
        new Span(
            span.needs(),
            span.pieces().stream().map(this::keptBack).toList(),
            span.journeys(),
            span.policies()));
  }

  private Piece keptBack(Piece piece) {
    Set<MassId> masses = Set.copyOf(keptBack.getOrDefault(piece.code(), List.of()));
    List<Away> times = masses.stream().flatMap(mass -> time(mass).stream()).toList();
    if (times.isEmpty() || piece.staysHome()) {
      return piece;
    }
    boolean wantedAtHome = times.stream().anyMatch(time -> isWantedAtHome(piece, time));
    List<Away> away = new ArrayList<>(piece.away());
    away.addAll(times);
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        wantedAtHome,
        piece.set(),
        wantedAtHome ? piece.away() : away,
        piece.make());
  }

  private Optional<Away> time(MassId mass) {
    List<Need> own = needs.getOrDefault(mass, List.of());
    Optional<Instant> from =
        own.stream().map(need -> need.window().setOut()).min(Comparator.naturalOrder());
    return from.map(
        start ->
            new Away(
                start,
                own.stream()
                    .map(need -> need.window().cleared())
                    .max(Comparator.naturalOrder())
                    .orElseThrow(),
                NO));
  }

  /** Whether a Mass in its own church would go without it meanwhile: then it only stays there. */
  private boolean isWantedAtHome(Piece piece, Away time) {
    return situation.span().needs().stream()
        .filter(need -> need.church().equals(piece.home()))
        .anyMatch(
            need ->
                need.window().setOut().isBefore(time.until())
                    && time.from().isBefore(need.window().cleared()));
  }
}
