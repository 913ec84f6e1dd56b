package vestiary.allocation;

import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.vesting.Window;

/** All pieces of one kind, in order of code, and which of them serve a need. */
final class Pool {

  private record Tint(Colour colour, boolean festive, List<Step> steps) {}

  private record Asking(MassId mass, ChurchId church, Window window, Tint tint) {}

  private static final BitSet NONE = new BitSet();

  private final Span span;
  private final List<Piece> pieces;
  private final Access access;
  private final Absences absences;
  private final Journeys journeys;
  private final Map<ChurchId, BitSet> homes = new HashMap<>();
  private final Map<ChurchId, BitSet> reaching = new HashMap<>();
  private final BitSet movable = new BitSet();
  private final Map<MassId, BitSet> keptFrom = new HashMap<>();
  private final Map<Tint, BitSet> tinted = new HashMap<>();
  private final Map<Asking, BitSet> serving = new HashMap<>();

  Pool(Span span, PieceKind kind) {
    this.span = span;
    this.access = new Access(span.journeys());
    this.pieces =
        span.pieces().stream()
            .filter(piece -> piece.kind() == kind)
            .sorted(Comparator.comparing(Piece::code))
            .toList();
    this.journeys = span.journeys();
    this.absences = new Absences(pieces, journeys);
    for (int place = 0; place < pieces.size(); place++) {
      Piece piece = pieces.get(place);
      homes.computeIfAbsent(piece.home(), unknown -> new BitSet()).set(place);
      movable.set(place, !piece.staysHome() && journeys.place(piece.home()) >= 0);
      for (MassId mass : piece.keptFrom()) {
        keptFrom.computeIfAbsent(mass, unknown -> new BitSet()).set(place);
      }
    }
  }

  int size() {
    return pieces.size();
  }

  Piece piece(int place) {
    return pieces.get(place);
  }

  /** The pieces that serve the need in the colour it asks for. */
  BitSet serving(Need need) {
    return serving(need, List.of());
  }

  /** The pieces that serve the need in any colour its ladder allows. */
  BitSet servingLawfully(Need need) {
    return serving(need, need.ladder());
  }

  /** Those of the pieces that lie at the need's church. */
  BitSet there(BitSet places, Need need) {
    if (!span.lying().stops().isEmpty()) {
      BitSet own = (BitSet) places.clone();
      places.stream().filter(place -> !span.isThere(pieces.get(place), need)).forEach(own::clear);
      return own;
    }
    BitSet own = (BitSet) homes.getOrDefault(need.church(), NONE).clone();
    own.and(places);
    return own;
  }

  /**
   * All pieces of a colour that the needs ask for, told apart.
   *
   * @param counted the pieces of the finding
   * @param reachable those that serve any of the needs from anywhere, the counted included
   */
  Stock stock(List<Need> needs, BitSet counted, BitSet reachable) {
    BitSet elsewhere = (BitSet) reachable.clone();
    elsewhere.andNot(counted);
    BitSet others = new BitSet();
    tints(needs).forEach(need -> others.or(tinted(need, List.of())));
    others.andNot(reachable);
    return new Stock(
        those(counted),
        new OnDemand<>(() -> those(elsewhere)),
        new OnDemand<>(
            () ->
                others.stream()
                    .mapToObj(pieces::get)
                    .map(piece -> hindered(piece, needs))
                    .toList()));
  }

  /** Needs of the same colour ask for the same pieces. */
  private static List<Need> tints(List<Need> needs) {
    Need first = needs.get(0);
    boolean alike =
        needs.stream()
            .allMatch(n -> n.colour() == first.colour() && n.festive() == first.festive());
    return alike ? needs.subList(0, 1) : needs;
  }

  private List<Piece> those(BitSet places) {
    Piece[] those = new Piece[places.cardinality()];
    for (int at = 0, place = places.nextSetBit(0); at < those.length; at++) {
      those[at] = pieces.get(place);
      place = places.nextSetBit(place + 1);
    }
    return List.of(those);
  }

  private BitSet serving(Need need, List<Step> steps) {
    Tint tint = new Tint(need.colour(), need.festive(), steps);
    return serving.computeIfAbsent(
        new Asking(need.mass(), need.church(), need.window(), tint),
        like -> possible(tinted(need, steps), need));
  }

  private BitSet possible(BitSet places, Need need) {
    BitSet possible = (BitSet) places.clone();
    possible.and(reaching.computeIfAbsent(need.church(), this::reaching));
    possible.andNot(keptFrom.getOrDefault(need.mass(), NONE));
    absences.takeOut(possible, need.church(), need.window());
    return possible;
  }

  /** The pieces that can come to a church, if they are not away. */
  private BitSet reaching(ChurchId church) {
    BitSet reaching = new BitSet();
    if (journeys.place(church) >= 0) {
      reaching.or(movable);
      if (!journeys.areComplete()) {
        homes.forEach(
            (home, own) -> {
              if (journeys.seconds(home, church) == Journeys.NO_WAY) {
                reaching.andNot(own);
              }
            });
      }
    }
    reaching.or(homes.getOrDefault(church, NONE));
    return reaching;
  }

  private BitSet tinted(Need need, List<Step> steps) {
    return tinted.computeIfAbsent(
        new Tint(need.colour(), need.festive(), steps),
        like -> kept(all(), piece -> serves(piece, need, steps)));
  }

  private static boolean serves(Piece piece, Need need, List<Step> steps) {
    return steps.isEmpty()
        ? need.isServedBy(piece.colours())
        : need.isLawfullyServedBy(piece.colours());
  }

  private NotServing hindered(Piece piece, List<Need> needs) {
    Need first =
        needs.stream().filter(need -> need.isServedBy(piece.colours())).findFirst().orElseThrow();
    return access.findHindrance(piece, first).orElseThrow();
  }

  private BitSet all() {
    BitSet all = new BitSet();
    all.set(0, pieces.size());
    return all;
  }

  private BitSet kept(BitSet places, Predicate<Piece> wanted) {
    BitSet kept = new BitSet(pieces.size());
    for (int place = places.nextSetBit(0); place >= 0; place = places.nextSetBit(place + 1)) {
      if (wanted.test(pieces.get(place))) {
        kept.set(place);
      }
    }
    return kept;
  }
}
