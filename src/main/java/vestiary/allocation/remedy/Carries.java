package vestiary.allocation.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Situation;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/** What could be carried to the Masses of a shortage, and what is there for them. */
final class Carries {

  private final Shortage shortage;
  private final Situation situation;
  private final int missing;

  Carries(Shortage shortage, Situation situation) {
    this.shortage = shortage;
    this.situation = situation;
    this.missing = shortage.missing();
  }

  /**
   * From one church at a time, as many as are missing, with the stoles of their sets; and where a
   * church has a suit for all of one Mass, the whole of it, so that all match.
   */
  List<Change> all() {
    Map<ChurchId, List<Piece>> byHome =
        shortage.elsewhere().stream()
            .sorted(
                Comparator.comparing((Piece piece) -> situation.traits(piece).onAsking())
                    .thenComparing(Piece::code))
            .collect(Collectors.groupingBy(this::lies, TreeMap::new, Collectors.toList()));
    List<Change> carries = new ArrayList<>();
    byHome.forEach(
        (home, pieces) -> {
          if (pieces.size() >= missing) {
            carries.add(carry(home, shortage.unserved(), pieces.subList(0, missing)));
          }
          suit(pieces).ifPresent(suit -> carries.add(carry(home, shortage.needs(), suit)));
        });
    return carries;
  }

  /** Where it lies when the first of them is set out. */
  private ChurchId lies(Piece piece) {
    return situation.span().lying().church(piece, shortage.from());
  }

  private Optional<List<Piece>> suit(List<Piece> pieces) {
    int needed = shortage.needed();
    if (shortage.masses().size() > 1 || needed == missing) {
      return Optional.empty();
    }
    return pieces.stream()
        .filter(piece -> !situation.traits(piece).suit().isEmpty())
        .collect(
            Collectors.groupingBy(
                piece -> situation.traits(piece).suit(), TreeMap::new, Collectors.toList()))
        .values()
        .stream()
        .filter(suit -> suit.size() >= needed)
        .map(suit -> suit.subList(0, needed))
        .findFirst();
  }

  private Change carry(ChurchId home, List<Need> needs, List<Piece> pieces) {
    List<Hold> holds = new ArrayList<>();
    List<Piece> all = new ArrayList<>();
    for (int at = 0; at < pieces.size(); at++) {
      Need need = needs.get(at);
      for (Piece piece : withMates(pieces.get(at))) {
        all.add(piece);
        holds.add(new Hold(piece.code(), need.mass(), need.church(), need.window()));
      }
    }
    return new Change.Carry(all, home, holds);
  }

  /**
   * What a church has of its own, for those who are not short: a change by which nothing need be
   * carried is not an occasion to carry something finer.
   */
  List<Hold> atHome() {
    List<Hold> holds = new ArrayList<>();
    if (shortage.level() == Level.CLUSTER || shortage.masses().size() > 1) {
      return holds;
    }
    List<Need> served = new ArrayList<>(shortage.needs());
    served.removeAll(shortage.unserved());
    for (int at = 0; at < Math.min(served.size(), shortage.available()); at++) {
      Need need = served.get(at);
      for (Piece piece : withMates(shortage.pieces().get(at))) {
        boolean held =
            situation.holds().stream().anyMatch(hold -> hold.piece().equals(piece.code()));
        if (!held && piece.home().equals(need.church())) {
          holds.add(new Hold(piece.code(), need.mass(), need.church(), need.window()));
        }
      }
    }
    return holds;
  }

  /** A piece with the stole of its set. */
  List<Piece> withMates(Piece piece) {
    PieceKind mate = Candidates.mateOf(piece.kind());
    return Stream.concat(
            Stream.of(piece),
            situation.span().pieces().stream()
                .filter(other -> other.kind() == mate && mate != piece.kind())
                .filter(other -> !piece.set().isEmpty() && other.set().equals(piece.set())))
        .toList();
  }
}
