package vestiary.setout;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.acceptance.AcceptedStep;
import vestiary.calendar.Colour;
import vestiary.planning.SpanToCheck;
import vestiary.planning.WearerNames;
import vestiary.pool.CarriedPiece;
import vestiary.pool.LaidPiece;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Brings;
import vestiary.vesting.LayingOut;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestingPolicies;
import vestiary.vesting.Window;

/** Works out what lies on the table for one Mass from what is planned, held, carried and free. */
final class SetOutOfMass {

  private record KindAndColour(PieceKind kind, Colour colour) {}

  private final SpanToCheck span;
  private final DatedMass mass;
  private final List<CarriedPiece> carried;
  private final PlaceWords places;
  private final AlbWords albs;
  private final Window window;
  private final List<Need> asked;
  private final Map<Role, Long> persons;
  private final Slots laid;
  private final Map<String, PooledPiece> pieces;
  private final List<LayingOut.Pile> piles;

  /**
   * @param laid what is there for this Mass
   * @param carried what is carried on the days of the span
   */
  SetOutOfMass(SpanToCheck span, DatedMass mass, List<LaidPiece> laid, List<CarriedPiece> carried) {
    this.span = span;
    this.mass = mass;
    this.carried = List.copyOf(carried);
    VestingPolicies policies = span.cluster().policies().vesting();
    this.window = Window.of(mass.toVestedMass(), policies);
    this.places = new PlaceWords(span, carried);
    this.albs = new AlbWords(span, mass);
    this.asked = span.needs(mass);
    this.pieces =
        span.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
    this.piles = LayingOut.piles(mass.toVestedMass(), policies, span.kept());
    this.persons =
        piles.stream()
            .collect(Collectors.groupingBy(pile -> pile.wearer().role(), Collectors.counting()));
    this.laid = Slots.of(piles, laid, pieces, asked);
  }

  SetOut read() {
    return new SetOut(
        mass,
        window,
        !laid.isEmpty(),
        piles.stream().map(this::person).toList(),
        spares(),
        coming(),
        albs.asked(asked));
  }

  private SetOut.Vested person(LayingOut.Pile pile) {
    return new SetOut.Vested(
        pile.wearer(),
        WearerNames.of(mass, pile.wearer()),
        pile.laid().stream().map(this::line).toList(),
        pile.beside().stream().map(this::line).toList());
  }

  private SetOut.Line line(Need whole) {
    Slots.Slot slot = Slots.Slot.of(whole);
    List<Step> steps = accepted(slot);
    Need need = laid.findAsked(slot).orElse(whole);
    Optional<LaidPiece> found = laid.find(slot);
    if (found.isPresent()) {
      PooledPiece piece = pieces.get(found.get().piece());
      return new SetOut.Line(
          need,
          SetOut.Whence.POOL,
          List.of(piece),
          steps,
          found.get().state(),
          places.of(piece, mass, window),
          albs.fit(need, piece));
    }
    SetOut.Whence whence = whence(slot, steps);
    String where = whence == SetOut.Whence.CUPBOARD ? say("from the cupboard") : "";
    String fit = whence == SetOut.Whence.OPEN ? albs.wanted(need) : "";
    return new SetOut.Line(need, whence, List.of(), steps, "", where, fit);
  }

  private SetOut.Whence whence(Slots.Slot slot, List<Step> steps) {
    if (laid.findAsked(slot).isPresent()) {
      return SetOut.Whence.OPEN;
    }
    if (!steps.isEmpty()) {
      return SetOut.Whence.LEFT_OUT;
    }
    return isBrought(slot) ? SetOut.Whence.BROUGHT : SetOut.Whence.CUPBOARD;
  }

  private List<Step> accepted(Slots.Slot slot) {
    return span.accepted().stream()
        .filter(one -> one.wearer().equals(slot.wearer()) && one.kind() == slot.kind())
        .filter(one -> one.church().equals(mass.church().id()))
        .map(AcceptedStep::step)
        .toList();
  }

  /** The last in number are taken to bring their own, as when needs are counted. */
  private boolean isBrought(Slots.Slot slot) {
    int bringing =
        mass.brings().stream()
            .filter(brings -> brings.role() == slot.wearer().role())
            .filter(brings -> brings.kinds().isEmpty() || brings.kinds().contains(slot.kind()))
            .mapToInt(Brings::count)
            .sum();
    return slot.wearer().ordinal() > persons.get(slot.wearer().role()) - bringing;
  }

  private List<SetOut.Spare> spares() {
    List<PooledPiece> free = new AtHand(span, carried).at(mass.church().id(), mass.id(), window);
    Map<KindAndColour, List<Need>> alike =
        asked.stream()
            .collect(
                Collectors.groupingBy(
                    need -> new KindAndColour(need.kind(), need.colour()),
                    LinkedHashMap::new,
                    Collectors.toList()));
    return alike.entrySet().stream()
        .sorted(Comparator.comparing(entry -> LayingOut.ORDER.indexOf(entry.getKey().kind())))
        .map(entry -> spare(entry.getKey(), entry.getValue(), free))
        .toList();
  }

  private static SetOut.Spare spare(KindAndColour alike, List<Need> needs, List<PooledPiece> free) {
    return new SetOut.Spare(
        alike.kind(),
        alike.colour(),
        needs.size(),
        free.stream()
            .filter(piece -> piece.kind() == alike.kind())
            .filter(piece -> needs.get(0).isServedBy(piece.colours()))
            .toList(),
        needs.stream().flatMap(need -> need.ladder().stream()).distinct().toList());
  }

  private List<SetOut.Coming> coming() {
    List<String> ours = laid.codes();
    Map<Instant, List<CarriedPiece>> byArrival =
        carried.stream()
            .filter(one -> one.to().equals(mass.church().id()))
            .filter(one -> ours.contains(one.piece()))
            .filter(one -> !one.arriveBy().isAfter(window.start()))
            .filter(one -> places.findArrival(one.piece(), mass, window).equals(Optional.of(one)))
            .collect(
                Collectors.groupingBy(CarriedPiece::arriveBy, TreeMap::new, Collectors.toList()));
    return byArrival.values().stream().map(this::coming).toList();
  }

  private SetOut.Coming coming(List<CarriedPiece> together) {
    CarriedPiece one = together.get(0);
    return new SetOut.Coming(
        together.stream().map(CarriedPiece::piece).sorted().toList(),
        places.church(one.from()),
        one.arriveBy(),
        one.carrier(),
        places.back(one.piece(), window));
  }
}
