package vestiary.allocation.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;

/**
 * Pieces of one set, or a single piece, that lie somewhere after all that a plan does with them.
 *
 * @param pieces in order of code, one or more
 * @param since when they are free there; {@link Instant#MIN} if they lie there from the start
 */
public record Resting(List<Piece> pieces, ChurchId church, ChurchId home, Instant since) {

  private record Last(ChurchId church, Instant since) {}

  public Resting {
    pieces = List.copyOf(pieces);
  }

  /** What lies elsewhere than at home in the end, by code; a piece that is away is at home. */
  public static List<Resting> awayFromHome(Plan plan, Situation situation) {
    Map<String, List<Piece>> sets = new TreeMap<>();
    Map<String, Last> lasts = new TreeMap<>();
    for (Piece piece : situation.span().pieces()) {
      Last last = last(piece, plan, situation);
      if (!last.church().equals(piece.home())) {
        lasts.put(piece.code(), last);
        String set = piece.set().isEmpty() ? piece.code() : piece.set();
        sets.computeIfAbsent(set + " " + last.church(), unknown -> new ArrayList<>()).add(piece);
      }
    }
    return sets.values().stream()
        .map(
            pieces -> {
              Piece first = pieces.get(0);
              return new Resting(
                  pieces.stream().sorted(Comparator.comparing(Piece::code)).toList(),
                  lasts.get(first.code()).church(),
                  first.home(),
                  pieces.stream()
                      .map(piece -> lasts.get(piece.code()).since())
                      .max(Comparator.naturalOrder())
                      .orElseThrow());
            })
        .toList();
  }

  private static Last last(Piece piece, Plan plan, Situation situation) {
    Stream<Last> worn =
        plan.assignments().stream()
            .filter(one -> one.piece().equals(piece))
            .map(one -> new Last(one.need().church(), one.need().window().cleared()));
    Stream<Last> held =
        situation.holds().stream()
            .filter(hold -> hold.piece().equals(piece.code()))
            .map(hold -> new Last(hold.church(), hold.window().cleared()));
    Stream<Last> away = piece.away().stream().map(time -> new Last(piece.home(), time.until()));
    Stream<Last> carried =
        Stream.concat(plan.movements().stream(), plan.waysHome().stream())
            .filter(one -> one.pieces().contains(piece))
            .map(one -> new Last(one.to(), one.arriveBy()));
    return Stream.of(worn, held, away, carried)
        .flatMap(lasts -> lasts)
        .max(Comparator.comparing(Last::since))
        .orElseGet(() -> new Last(situation.start(piece), Instant.MIN));
  }
}
