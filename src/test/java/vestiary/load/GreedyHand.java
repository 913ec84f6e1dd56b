package vestiary.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import vestiary.allocation.Journeys;
import vestiary.allocation.Span;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * Plans as somebody does with pencil and paper: Mass after Mass, the nearest free piece of the
 * colour, the stole that belongs to the chasuble; nothing once given is taken back.
 */
final class GreedyHand {

  private record Where(ChurchId church, Instant free) {}

  private final Span span;
  private final Journeys journeys;
  private final Map<String, Where> where = new HashMap<>();
  private final Map<String, List<Piece>> sets = new HashMap<>();
  private final Map<Need, Piece> worn = new HashMap<>();

  GreedyHand(Span span) {
    this.span = span;
    this.journeys = span.journeys();
    span.pieces()
        .forEach(
            piece -> {
              where.put(piece.code(), new Where(piece.home(), Instant.MIN));
              sets.computeIfAbsent(piece.set(), unknown -> new ArrayList<>()).add(piece);
            });
  }

  /** What each need is served with; needs that are not are missing. */
  Map<Need, Piece> plan() {
    Set<Need> served = new HashSet<>();
    Comparator<Need> order =
        Comparator.comparing((Need need) -> need.window().start())
            .thenComparing(Need::mass)
            .thenComparing(Need::role)
            .thenComparing(Need::ordinal)
            .thenComparing(Need::kind);
    for (Need need : span.needs().stream().sorted(order).toList()) {
      if (served.add(need)) {
        serve(need, served);
      }
    }
    return worn;
  }

  private void serve(Need need, Set<Need> served) {
    Optional<Piece> nearest =
        span.pieces().stream()
            .filter(piece -> piece.kind() == need.kind() && need.isServedBy(piece.colours()))
            .filter(piece -> isFree(piece, need))
            .min(
                Comparator.comparing((Piece piece) -> time(piece, need))
                    .thenComparing(Piece::code));
    if (nearest.isEmpty()) {
      return;
    }
    for (Piece piece : sets.get(nearest.get().set())) {
      span.needs().stream()
          .filter(n -> n.wearer().equals(need.wearer()) && n.kind() == piece.kind())
          .filter(n -> n.isServedBy(piece.colours()))
          .forEach(
              n -> {
                served.add(n);
                worn.put(n, piece);
              });
      take(piece, need);
    }
  }

  private void take(Piece piece, Need need) {
    where.put(piece.code(), new Where(need.church(), need.window().cleared()));
  }

  private boolean isFree(Piece piece, Need need) {
    Where from = where.get(piece.code());
    boolean moves = !from.church().equals(need.church());
    boolean inTime =
        from.free().equals(Instant.MIN)
            || !from.free().plus(time(piece, need)).isAfter(need.window().setOut());
    return inTime
        && !(moves && piece.staysHome())
        && piece.away().stream().allMatch(a -> leaves(a, piece, need));
  }

  private boolean leaves(Away away, Piece piece, Need need) {
    Duration way = journeys.find(piece.home(), need.church()).orElseThrow();
    return !need.window().setOut().minus(way).isBefore(away.until())
        || !need.window().cleared().plus(way).isAfter(away.from());
  }

  private Duration time(Piece piece, Need need) {
    return journeys.find(where.get(piece.code()).church(), need.church()).orElseThrow();
  }
}
