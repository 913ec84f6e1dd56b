package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import vestiary.allocation.plan.Fit;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.AlbLength;
import vestiary.vesting.Need;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Window;
import vestiary.web.Speech;

/**
 * Finds those who vest at a Mass and for whom no alb of the church fits. Too long an alb trips its
 * wearer, which is to be decided; too short a one looks poor, which is worth knowing. That there
 * are too few albs at all is a shortage.
 */
final class AlbsThatFit {

  private final DatedMass mass;
  private final SpanToCheck span;
  private final List<PooledPiece> here;
  private final Map<PooledPiece, Need> given = new HashMap<>();

  private AlbsThatFit(DatedMass mass, SpanToCheck span, Window window) {
    this.mass = mass;
    this.span = span;
    this.here =
        span.pieces().stream()
            .filter(piece -> piece.kind() == PieceKind.ALB)
            .filter(piece -> span.lies(piece.toPiece(), window.setOut()).equals(mass.church().id()))
            .filter(
                piece ->
                    piece.toPiece().away().stream()
                        .noneMatch(
                            away ->
                                away.from().isBefore(window.cleared())
                                    && away.until().isAfter(window.setOut())))
            .toList();
  }

  /** One finding for those of one Mass; none if everybody's alb fits or nobody's size is known. */
  static List<Clash> of(DatedMass mass, SpanToCheck span) {
    List<Need> albs =
        span.needs(mass).stream().filter(need -> need.kind() == PieceKind.ALB).toList();
    return albs.isEmpty()
        ? List.of()
        : new AlbsThatFit(mass, span, albs.get(0).window()).clashes(albs);
  }

  private List<Clash> clashes(List<Need> albs) {
    List<Need> unfit = new ArrayList<>();
    for (Need need : albs) {
      if (!fit(need).equals(Fit.ANY) && !findOne(need, new HashSet<>())) {
        unfit.add(need);
      }
    }
    return unfit.isEmpty() || here.isEmpty() ? List.of() : List.of(clash(unfit));
  }

  private Fit fit(Need need) {
    AlbLength known = span.albLength(mass, need.wearer());
    return known.isKnown() ? Fit.of(known) : Fit.around(need.preferred().size());
  }

  /** Another gives way if he finds another that fits him: so that all get one who can. */
  private boolean findOne(Need need, Set<PooledPiece> tried) {
    for (PooledPiece alb : here) {
      if (fit(need).suits(AlbLength.centimetres(alb.size())) && tried.add(alb)) {
        if (!given.containsKey(alb) || findOne(given.get(alb), tried)) {
          given.put(alb, need);
          return true;
        }
      }
    }
    return false;
  }

  private Clash clash(List<Need> unfit) {
    boolean trips = unfit.stream().anyMatch(this::trips);
    List<String> who =
        unfit.stream().map(need -> WearerNames.of(mass, need.wearer())).distinct().toList();
    return new Clash(
        ClashId.of(
            ClashKind.SIZE,
            List.of(mass),
            unfit.stream()
                .map(need -> need.role().id() + need.ordinal())
                .reduce("", (all, one) -> all + "," + one)),
        ClashKind.SIZE,
        trips ? ClashSeverity.DECIDE : ClashSeverity.KNOW,
        List.of(mass),
        new ClashWords(
            "%s, %s, %s"
                .formatted(
                    mass.church().name(), Speech.day(mass.date()), Speech.clock(mass.start())),
            say("No alb that is here fits %s", Speech.list(who)),
            say("no alb that fits"),
            trips
                ? say("In one too long he would trip.") + elsewhere(unfit)
                : say("Those that are left are too short.") + elsewhere(unfit),
            say("Whoever has an alb of his own may bring it.")),
        List.of());
  }

  /** Whether all that are left would trip him. */
  private boolean trips(Need need) {
    return here.stream()
        .mapToInt(alb -> AlbLength.centimetres(alb.size()))
        .filter(length -> length > 0)
        .allMatch(length -> length > fit(need).longest());
  }

  private String elsewhere(List<Need> unfit) {
    Optional<PooledPiece> other =
        span.pieces().stream()
            .filter(piece -> piece.kind() == PieceKind.ALB && !piece.toPiece().staysHome())
            .filter(piece -> !here.contains(piece))
            .filter(piece -> AlbLength.centimetres(piece.size()) > 0)
            .filter(piece -> fit(unfit.get(0)).suits(AlbLength.centimetres(piece.size())))
            .min(Comparator.comparing(PooledPiece::code));
    return other
        .map(
            alb ->
                say(
                    " %s, %s cm, at %s would suit.",
                    alb.code(), AlbLength.centimetres(alb.size()), church(alb)))
        .orElse("");
  }

  private String church(PooledPiece alb) {
    return span.churches().stream()
        .filter(church -> church.id().equals(alb.home()))
        .map(church -> church.name())
        .findFirst()
        .orElse(say("another church"));
  }
}
