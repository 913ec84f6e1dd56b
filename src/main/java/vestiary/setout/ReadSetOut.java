package vestiary.setout;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.LaidPiece;
import vestiary.pool.ReadLaid;
import vestiary.pool.ReadTaken;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.MassId;

/** What lies on the vesting table, Mass by Mass. */
@ApplicationScoped
@Transactional
public class ReadSetOut {

  /** Before a Mass, pieces may have come some days ago; what came earlier lies here anyway. */
  private static final int DAYS_AROUND = 7;

  private final CheckClashes check;
  private final ReadMasses masses;
  private final ReadLaid laid;
  private final ReadTaken taken;
  private final CurrentVisitor visitor;

  ReadSetOut(
      CheckClashes check,
      ReadMasses masses,
      ReadLaid laid,
      ReadTaken taken,
      CurrentVisitor visitor) {
    this.visitor = visitor;
    this.check = check;
    this.masses = masses;
    this.laid = laid;
    this.taken = taken;
  }

  /**
   * What was loaded to tell it.
   *
   * @param carried what is carried on the days around
   */
  public record Loaded(SpanToCheck span, List<CarriedPiece> carried) {
    public Loaded {
      carried = List.copyOf(carried);
    }
  }

  /**
   * The days that were asked for, and what is carried around them. How tall people are is told to
   * those alone who set out.
   */
  public Loaded load(LocalDate first, LocalDate last) {
    SpanToCheck loaded = check.load(first, last);
    SpanToCheck span = visitor.visitor().may(Action.SET_OUT) ? loaded : loaded.withoutHeights();
    ZoneId zone = span.cluster().zone();
    Instant from = first.minusDays(DAYS_AROUND).atStartOfDay(zone).toInstant();
    Instant until = last.plusDays(DAYS_AROUND).atStartOfDay(zone).toInstant();
    return new Loaded(span, taken.carriedBetween(from, until));
  }

  /**
   * The sheet of the Mass that an address names.
   *
   * @throws Refused if there is none, or it is cancelled
   */
  public SetOut get(String id) {
    DatedMass mass = standing(id);
    return of(load(mass.date(), mass.date()), List.of(mass)).get(0);
  }

  /**
   * The Mass that an address names.
   *
   * @throws Refused if there is none, or it is cancelled
   */
  public DatedMass standing(String id) {
    DatedMass mass = masses.get(id);
    if (mass.chosen().cancelled()) {
      throw new Refused(
          new Refusal.Beyond(say("This Mass is cancelled, so that nothing is set out for it.")));
    }
    return mass;
  }

  /**
   * The sheets of all Masses of a span, by church, then start.
   *
   * @param church short name of one; empty for all
   */
  public List<SetOut> between(LocalDate first, LocalDate last, String church) {
    Loaded loaded = load(first, last);
    List<DatedMass> wanted =
        loaded.span().churches().stream()
            .filter(one -> church.isEmpty() || one.slug().equals(church))
            .flatMap(
                one ->
                    loaded.span().asked().stream()
                        .filter(mass -> mass.church().id().equals(one.id())))
            .toList();
    return of(loaded, wanted);
  }

  private List<SetOut> of(Loaded loaded, List<DatedMass> wanted) {
    Map<MassId, List<LaidPiece>> byMass =
        laid.of(wanted.stream().map(DatedMass::id).toList()).stream()
            .collect(Collectors.groupingBy(LaidPiece::mass));
    return wanted.stream()
        .map(
            mass ->
                new SetOutOfMass(
                        loaded.span(),
                        mass,
                        byMass.getOrDefault(mass.id(), List.of()),
                        loaded.carried())
                    .read())
        .toList();
  }
}
