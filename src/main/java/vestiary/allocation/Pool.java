package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/** All pieces of one kind, in order of code, and which of them serve a need. */
final class Pool {

  private record Place(ChurchId church, Window window) {}

  private record Asking(Place place, Colour colour, boolean festive, List<Step> steps) {}

  private final List<Piece> pieces;
  private final Access access;
  private final Map<Place, BitSet> accessible = new HashMap<>();
  private final Map<Asking, BitSet> serving = new HashMap<>();

  Pool(Span span, PieceKind kind) {
    this.access = new Access(span.journeys());
    this.pieces =
        span.pieces().stream()
            .filter(piece -> piece.kind() == kind)
            .sorted(Comparator.comparing(Piece::code))
            .toList();
  }

  int size() {
    return pieces.size();
  }

  /** The pieces that serve the need in the colour it asks for. */
  BitSet serving(Need need) {
    return serving.computeIfAbsent(
        asking(need, List.of()),
        like -> kept(accessible(need), piece -> need.isServedBy(piece.colours())));
  }

  /** The pieces that serve the need in any colour its ladder allows. */
  BitSet servingLawfully(Need need) {
    return serving.computeIfAbsent(
        asking(need, need.ladder()),
        like -> kept(accessible(need), piece -> need.isLawfullyServedBy(piece.colours())));
  }

  /** Those of the pieces whose home is the need's church. */
  BitSet atHome(BitSet places, Need need) {
    return kept(places, piece -> piece.home().equals(need.church()));
  }

  /**
   * All pieces of a colour that the needs ask for, told apart.
   *
   * @param counted the pieces of the finding
   * @param reachable those that serve any of the needs from anywhere
   */
  Stock stock(List<Need> needs, BitSet counted, BitSet reachable) {
    List<Piece> elsewhere = new ArrayList<>();
    List<NotServing> others = new ArrayList<>();
    for (int place = 0; place < pieces.size(); place++) {
      Piece piece = pieces.get(place);
      Optional<Need> first =
          needs.stream().filter(need -> need.isServedBy(piece.colours())).findFirst();
      if (reachable.get(place) && !counted.get(place)) {
        elsewhere.add(piece);
      } else if (!counted.get(place) && first.isPresent()) {
        others.add(access.findHindrance(piece, first.get()).orElseThrow());
      }
    }
    return new Stock(counted.stream().mapToObj(pieces::get).toList(), elsewhere, others);
  }

  private static Asking asking(Need need, List<Step> steps) {
    Place place = new Place(need.church(), need.window());
    return new Asking(place, need.colour(), need.festive(), steps);
  }

  private BitSet accessible(Need need) {
    return accessible.computeIfAbsent(
        new Place(need.church(), need.window()),
        place ->
            IntStream.range(0, pieces.size())
                .filter(piece -> access.findHindrance(pieces.get(piece), need).isEmpty())
                .collect(BitSet::new, BitSet::set, BitSet::or));
  }

  private BitSet kept(BitSet places, Predicate<Piece> wanted) {
    return places.stream()
        .filter(place -> wanted.test(pieces.get(place)))
        .collect(BitSet::new, BitSet::set, BitSet::or);
  }
}
