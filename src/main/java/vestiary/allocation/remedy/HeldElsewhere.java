package vestiary.allocation.remedy;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import vestiary.allocation.Journeys;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Hold;
import vestiary.vesting.Away;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;

/**
 * A span as it is for those who hold nothing: a piece that is set aside for a Mass in another
 * church than its own is away for everybody else, and who is to wear it asks for nothing more.
 */
public final class HeldElsewhere {

  private final Journeys journeys;
  private final List<Need> needs;
  private final List<Piece> pieces = new ArrayList<>();

  private HeldElsewhere(Span span, List<Hold> holds) {
    this.journeys = span.journeys();
    this.needs = new ArrayList<>(span.needs());
    span.pieces().forEach(piece -> admit(piece, holds));
  }

  /** The span without what is held, and without those for whom it is. */
  public static Span of(Span span, List<Hold> holds) {
    HeldElsewhere held = new HeldElsewhere(span, holds);
    return new Span(held.needs, held.pieces, span.journeys(), span.policies(), span.lying());
  }

  private void admit(Piece piece, List<Hold> holds) {
    List<Hold> own =
        holds.stream()
            .filter(hold -> hold.piece().equals(piece.code()))
            .filter(hold -> !hold.church().equals(piece.home()))
            .filter(hold -> !piece.keptFrom().contains(hold.mass()))
            .filter(hold -> hold.window().setOut().isBefore(hold.window().cleared()))
            .toList();
    own.forEach(hold -> serve(hold, piece));
    pieces.add(own.isEmpty() ? piece : piece(piece, own));
  }

  /** The last in number, since which of them has it makes no difference. */
  private void serve(Hold hold, Piece piece) {
    needs.stream()
        .filter(need -> need.mass().equals(hold.mass()) && need.kind() == piece.kind())
        .filter(need -> need.isLawfullyServedBy(piece.colours()))
        .max(
            Comparator.comparing((Need need) -> need.isServedBy(piece.colours()))
                .thenComparing(need -> need))
        .ifPresent(needs::remove);
  }

  private Piece piece(Piece piece, List<Hold> holds) {
    List<Away> times =
        Stream.concat(piece.away().stream(), holds.stream().map(hold -> away(piece, hold)))
            .toList();
    return piece.away(times);
  }

  /** With the roads, since an absence begins and ends at home. */
  private Away away(Piece piece, Hold hold) {
    Duration there = journeys.find(piece.home(), hold.church()).orElse(Duration.ZERO);
    Duration back = journeys.find(hold.church(), piece.home()).orElse(Duration.ZERO);
    return new Away(
        hold.window().setOut().minus(there),
        hold.window().cleared().plus(back),
        "set aside for another church");
  }
}
