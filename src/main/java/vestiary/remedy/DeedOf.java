package vestiary.remedy;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.acceptance.AcceptedStep;
import vestiary.allocation.Shortage;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Movement;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Leeway;
import vestiary.allocation.remedy.Remedy;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.Planned;
import vestiary.pool.PlannedWear;
import vestiary.pool.SetAside;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassState;
import vestiary.vesting.Brings;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;

/** From a remedy of the core to the rows it changes. */
final class DeedOf {

  private final SpanToCheck span;
  private final Shortage shortage;
  private final Remedy remedy;
  private final Map<MassId, DatedMass> masses;
  private final Set<PieceKind> kinds;

  private DeedOf(SpanToCheck span, Shortage shortage, Remedy remedy) {
    this.span = span;
    this.shortage = shortage;
    this.remedy = remedy;
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.kinds =
        Leeway.Open.of(shortage).stream().map(Leeway.Open::kind).collect(Collectors.toSet());
  }

  static Deed of(SpanToCheck span, Shortage shortage, Remedy remedy) {
    return new DeedOf(span, shortage, remedy).deed();
  }

  private Deed deed() {
    Change change = remedy.change();
    if (change instanceof Change.Carry carry) {
      Set<String> codes = carry.pieces().stream().map(Piece::code).collect(Collectors.toSet());
      return deed(brought(one -> codes.contains(one.piece().code())), List.of());
    } else if (change instanceof Change.ChooseColour choice) {
      MassState before = MassState.of(masses.get(choice.mass()));
      return changed(before, before.in(choice.colour().id()));
    } else if (change instanceof Change.MoveStart move) {
      MassState before = MassState.of(masses.get(move.mass()));
      return changed(before, before.at(before.start().plus(move.by())));
    } else if (change instanceof Change.BringOwn own) {
      MassState before = MassState.of(masses.get(own.mass()));
      Brings more = new Brings(own.role(), own.count(), Set.of());
      return deed(brought(this::isConcerned), List.of(new Deed.Move(before, before.with(more))));
    } else if (change instanceof Change.TakeStep step) {
      Deed carried = deed(brought(this::isConcerned), List.of());
      return new Deed(carried.added(), List.of(), List.of(), accepted(step), List.of());
    } else if (change instanceof Change.Release release) {
      Deed carried = deed(brought(this::isConcerned), List.of());
      return new Deed(carried.added(), List.of(), List.of(), List.of(), released(release));
    }
    return Deed.NONE;
  }

  private static Deed deed(Planned added, List<Deed.Move> moves) {
    return new Deed(added, List.of(), moves, List.of(), List.of());
  }

  /** A Mass that is changed as a whole: what was planned for it goes, what it needs is brought. */
  private Deed changed(MassState before, MassState after) {
    MassId mass = before.mass();
    return new Deed(
        brought(one -> one.need().mass().equals(mass) || isConcerned(one)),
        span.taken().planned().stream().filter(one -> one.wearer().mass().equals(mass)).toList(),
        List.of(new Deed.Move(before, after)),
        List.of(),
        List.of());
  }

  private boolean isConcerned(Provision.Worn one) {
    return shortage.masses().contains(one.need().mass()) && kinds.contains(one.need().kind());
  }

  /**
   * What comes from another church for those who are concerned, with all that its pieces do and
   * drive on the way there.
   */
  private Planned brought(Predicate<Provision.Worn> concerned) {
    Map<String, Instant> last =
        away()
            .filter(concerned)
            .collect(
                Collectors.toMap(
                    one -> one.piece().code(),
                    one -> one.need().window().start(),
                    (a, b) -> a.isAfter(b) ? a : b));
    List<PlannedWear> worn =
        away()
            .filter(one -> last.containsKey(one.piece().code()))
            .filter(one -> !one.need().window().start().isAfter(last.get(one.piece().code())))
            .map(DeedOf::wear)
            .toList();
    List<CarriedPiece> carried = new ArrayList<>();
    for (Movement way : remedy.journeys()) {
      List<Piece> own =
          way.pieces().stream().filter(piece -> isUnderWay(piece, way, last)).toList();
      Instant due = due(own, way, worn);
      own.forEach(piece -> carried.add(carried(piece, way, due)));
    }
    return new Planned(worn, carried);
  }

  /** Set-out of the first Mass there: in company of others it might have been driven earlier. */
  private static Instant due(List<Piece> pieces, Movement way, List<PlannedWear> worn) {
    Set<String> codes = pieces.stream().map(Piece::code).collect(Collectors.toSet());
    return worn.stream()
        .filter(one -> codes.contains(one.piece()) && one.church().equals(way.to()))
        .map(PlannedWear::from)
        .filter(from -> !from.isBefore(way.arriveBy()))
        .min(Comparator.naturalOrder())
        .filter(from -> way.isCarriage())
        .orElse(way.arriveBy());
  }

  /** The stole of a set goes along with its chasuble, whether it is worn or not. */
  private boolean isUnderWay(Piece piece, Movement way, Map<String, Instant> last) {
    return way.pieces().stream()
        .filter(
            other ->
                other.equals(piece)
                    || (!(remedy.change() instanceof Change.TakeStep)
                        && !piece.set().isEmpty()
                        && other.set().equals(piece.set())))
        .map(other -> last.get(other.code()))
        .anyMatch(until -> until != null && !way.arriveBy().isAfter(until));
  }

  /** What is worn in another church than where it lies, and not planned or set aside already. */
  private Stream<Provision.Worn> away() {
    Set<List<Object>> known = new HashSet<>();
    span.taken().planned().forEach(one -> known.add(List.of(one.piece(), one.wearer().mass())));
    span.taken()
        .setAside()
        .forEach(one -> one.masses().forEach(mass -> known.add(List.of(one.piece(), mass))));
    return remedy.plan().assignments().stream()
        .filter(
            one ->
                !span.lies(one.piece(), one.need().window().setOut()).equals(one.need().church()))
        .filter(
            one ->
                isChanged(one.need().mass())
                    || !known.contains(List.of(one.piece().code(), one.need().mass())));
  }

  /** What was planned for such a Mass goes, so that nothing of it is planned already. */
  private boolean isChanged(MassId mass) {
    return remedy.change() instanceof Change.MoveStart move
        ? move.mass().equals(mass)
        : remedy.change() instanceof Change.ChooseColour choice && choice.mass().equals(mass);
  }

  private static PlannedWear wear(Provision.Worn one) {
    Need need = one.need();
    return new PlannedWear(
        one.piece().code(),
        need.wearer(),
        need.church(),
        one.depth(),
        need.window().setOut(),
        need.window().cleared());
  }

  private static CarriedPiece carried(Piece piece, Movement way, Instant due) {
    Duration later = Duration.between(way.arriveBy(), due);
    return new CarriedPiece(
        piece.code(),
        way.from(),
        way.to(),
        way.ready().equals(Instant.MIN) ? List.of() : List.of(way.ready()),
        way.leaveBy().plus(later),
        due,
        way.carrier(),
        way.onAsking());
  }

  private List<AcceptedStep> accepted(Change.TakeStep step) {
    return step.wearers().stream()
        .flatMap(
            wearer ->
                span.needs(masses.get(wearer.mass())).stream()
                    .filter(need -> need.wearer().equals(wearer))
                    .filter(need -> need.ladder().contains(step.step()))
                    .filter(need -> need.kind() == step.kind() || kinds.contains(need.kind())))
        .map(
            need ->
                new AcceptedStep(
                    need.wearer(),
                    need.kind(),
                    need.church(),
                    need.colour(),
                    step.step(),
                    "",
                    "",
                    Instant.EPOCH))
        .toList();
  }

  private List<SetAside> released(Change.Release release) {
    Set<List<Object>> held =
        release.holds().stream()
            .map((Hold hold) -> List.<Object>of(hold.piece(), hold.mass()))
            .collect(Collectors.toSet());
    return span.taken().setAside().stream()
        .filter(one -> !one.masses().isEmpty())
        .filter(one -> one.word().equals("held"))
        .filter(one -> held.contains(List.<Object>of(one.piece(), one.masses().get(0))))
        .toList();
  }
}
