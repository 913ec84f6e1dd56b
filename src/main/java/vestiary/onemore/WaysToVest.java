package vestiary.onemore;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.LayingOut;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;

/**
 * The ways to vest one more in what is at hand: as the norms ask, then down the ladder in the order
 * that the cluster has chosen, then in what he brought. The principal celebrant is never one more:
 * he wears the chasuble of the colour (RS 124).
 *
 * <p>Source: GIRM 209 and RS 124 for concelebrants, GIRM 338 for deacons.
 */
final class WaysToVest {

  private final List<Need> asked;
  private final List<PooledPiece> free;
  private final AlbLength albs;

  /**
   * @param free what lies in that church and is wanted by nobody meanwhile
   * @param albs which albs suit him
   */
  WaysToVest(SpanToCheck span, DatedMass mass, Role role, List<PooledPiece> free, AlbLength albs) {
    List<Need> before = span.needs(mass);
    this.asked =
        span.needs(mass.withOneMore(role)).stream()
            .filter(need -> before.stream().noneMatch(known -> isSame(known, need)))
            .toList();
    this.free = List.copyOf(free);
    this.albs = albs;
  }

  private static boolean isSame(Need one, Need other) {
    return one.wearer().equals(other.wearer()) && one.kind() == other.kind();
  }

  /** The nearest to what is asked first; his own last. */
  List<Way> all() {
    List<Way> ways = new ArrayList<>();
    Optional<Need> outer =
        asked.stream()
            .filter(n -> n.kind() == PieceKind.CHASUBLE || n.kind() == PieceKind.DALMATIC)
            .findFirst();
    if (outer.isPresent()) {
      way(Way.COLOUR, outer.get(), List.of()).ifPresent(ways::add);
      for (Step step : outer.get().ladder()) {
        way(step.id(), outer.get(), List.of(step)).ifPresent(ways::add);
      }
    }
    ways.add(Way.own());
    return ways;
  }

  /** Whether albs of different lengths are at hand for him, so that it matters how tall he is. */
  boolean isHeightOfUse() {
    return asked.stream().anyMatch(need -> need.kind() == PieceKind.ALB)
        && free.stream()
                .filter(piece -> piece.kind() == PieceKind.ALB)
                .mapToInt(piece -> AlbLength.centimetres(piece.size()))
                .filter(length -> length > 0)
                .distinct()
                .count()
            > 1;
  }

  /** Empty if what must be worn in this way is not at hand. */
  private Optional<Way> way(String id, Need outer, List<Step> steps) {
    List<Way.Given> given = new ArrayList<>();
    List<Need> lacking = new ArrayList<>();
    boolean without = steps.stream().anyMatch(Step::isWithout);
    Optional<PooledPiece> garment = without ? Optional.empty() : garment(outer, steps);
    if (!without && garment.isEmpty()) {
      return Optional.empty();
    }
    garment.ifPresent(piece -> given.add(new Way.Given(outer, piece)));
    for (PieceKind kind : LayingOut.ORDER) {
      Optional<Need> need = asked.stream().filter(n -> n.kind() == kind && n != outer).findFirst();
      if (need.isEmpty()) {
        continue;
      }
      Optional<PooledPiece> piece = best(need.get(), garment);
      if (piece.isPresent()) {
        given.add(new Way.Given(need.get(), piece.get()));
      } else if (kind == PieceKind.STOLE || kind == PieceKind.DEACON_STOLE) {
        return Optional.empty();
      } else {
        lacking.add(need.get());
      }
    }
    return Optional.of(
        new Way(
            id, given, steps.stream().map(step -> new Way.Taken(outer, step)).toList(), lacking));
  }

  /** One whose own stole is at hand too goes before others. */
  private Optional<PooledPiece> garment(Need outer, List<Step> steps) {
    Predicate<PooledPiece> serves =
        steps.isEmpty()
            ? piece -> outer.isServedBy(piece.colours())
            : piece -> outer.isServedBy(steps.get(0), piece.colours());
    return free.stream()
        .filter(piece -> piece.kind() == outer.kind())
        .filter(serves)
        .min(
            Comparator.comparing((PooledPiece piece) -> !hasItsStole(piece))
                .thenComparing(PooledPiece::code));
  }

  private boolean hasItsStole(PooledPiece garment) {
    return !garment.set().isEmpty()
        && free.stream().anyMatch(other -> other != garment && other.set().equals(garment.set()));
  }

  private Optional<PooledPiece> best(Need need, Optional<PooledPiece> garment) {
    String set = garment.map(PooledPiece::set).orElse("");
    return free.stream()
        .filter(piece -> piece.kind() == need.kind())
        .filter(piece -> need.isServedBy(piece.colours()) || isBySubstitute(need, piece))
        .min(
            Comparator.comparing((PooledPiece piece) -> set.isEmpty() || !piece.set().equals(set))
                .thenComparing(piece -> !need.isServedBy(piece.colours()))
                .thenComparing(
                    piece -> need.kind() == PieceKind.ALB ? albs.strain(piece.size()) : 0)
                .thenComparing(PooledPiece::code));
  }

  private static boolean isBySubstitute(Need need, PooledPiece piece) {
    return need.ladder().stream().anyMatch(step -> need.isServedBy(step, piece.colours()));
  }
}
