package vestiary.own;

import static vestiary.web.Speech.say;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.planning.ClashSeverity;
import vestiary.planning.MassWords;
import vestiary.planning.PieceNouns;
import vestiary.planning.RoleAt;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ServesAs;
import vestiary.vesting.Need;
import vestiary.vesting.Role;
import vestiary.web.DayWords;
import vestiary.web.Speech;

/** Sets out the Masses of one person, with what he wears at each. */
final class OwnSheet {

  private final SpanToCheck span;
  private final UUID person;
  private final Map<String, PooledPiece> pieces;

  OwnSheet(SpanToCheck span, UUID person) {
    this.span = span;
    this.person = person;
    this.pieces =
        span.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
  }

  List<OwnView.Own> masses() {
    return named().map(this::own).toList();
  }

  /** How many of them fall into a time in which the person is away. */
  int away() {
    return (int) named().filter(this::isAway).count();
  }

  private Stream<DatedMass> named() {
    return span.asked().stream().filter(mass -> mass.isNamed(person));
  }

  private OwnView.Own own(DatedMass mass) {
    boolean isAway = isAway(mass);
    return own(
        mass,
        isAway ? severity(mass).id() : "",
        isAway ? away(mass) : deed(mass),
        isAway ? "" : wears(mass));
  }

  private OwnView.Own own(DatedMass mass, String mark, String deed, String wears) {
    String address = "/masses/" + mass.id().value();
    return new OwnView.Own(
        "%s, %s".formatted(Speech.day(mass.date()), Speech.clock(mass.start())),
        mass.church().name(),
        mark,
        deed,
        MassWords.whole(mass, Speech.localeOr(span.cluster().language())),
        DayWords.ribbon(mass.colour()),
        wears,
        address,
        address + "/vesture");
  }

  private boolean isAway(DatedMass mass) {
    return RoleAt.isAway(mass, person, span.attendance());
  }

  /** Without its celebrant it cannot stay so; without anybody else it can be celebrated. */
  private ClashSeverity severity(DatedMass mass) {
    return RoleAt.leads(mass, person) ? ClashSeverity.MUST : ClashSeverity.DECIDE;
  }

  private String away(DatedMass mass) {
    if (!RoleAt.leads(mass, person)) {
      return say("You are away then; another may be named");
    }
    return mass.kind().isMass()
        ? say("You are away then; another is to be named to celebrate")
        : say("You are away then; another is to be named to lead");
  }

  private String deed(DatedMass mass) {
    return RoleAt.serves(mass, person).map(OwnSheet::deed).orElseGet(() -> deedOfClergy(mass));
  }

  private static String deed(ServesAs as) {
    return switch (as) {
      case SERVER -> say("You serve");
      case ACOLYTE -> say("You serve as acolyte");
      case READER -> say("You read");
      case COMMUNION_MINISTER -> say("You help to give Communion");
      case SACRISTAN -> say("You prepare and clear away");
    };
  }

  private String deedOfClergy(DatedMass mass) {
    return switch (RoleAt.of(mass, person)) {
      case PRINCIPAL -> say("You celebrate");
      case MINISTER -> say("You lead");
      case DEACON -> say("You assist as deacon");
      default -> say("You concelebrate");
    };
  }

  private String wears(DatedMass mass) {
    Optional<Role> vests = RoleAt.findVests(mass, person);
    List<Need> asked =
        span.needs(mass).stream()
            .filter(n -> vests.stream().anyMatch(role -> role == n.role()) && n.ordinal() == 1)
            .toList();
    if (asked.isEmpty()) {
      return say("Nothing is asked of the vestments of the cluster.");
    }
    List<String> kinds =
        asked.stream().map(n -> Speech.noun(1, PieceNouns.of(n.kind()))).distinct().toList();
    Role role = vests.orElseThrow();
    Set<String> named = named(mass, role);
    return "%s.%s"
        .formatted(
            Speech.sentence(Speech.list(kinds)), named.isEmpty() ? "" : planned(role, named));
  }

  /** Who of several wears which piece, no plan says. */
  private static String planned(Role role, Collection<String> named) {
    String codes = Speech.list(List.copyOf(named));
    return switch (role) {
      case CONCELEBRANT -> say(" Set out for the concelebrants: %s.", codes);
      case DEACON -> say(" Set out for the deacons: %s.", codes);
      case SERVER, ACOLYTE, READER -> say(" Set out for those who serve: %s.", codes);
      default -> say(" Set out for you: %s.", codes);
    };
  }

  /** Sets by their own code, single pieces by theirs. */
  private Set<String> named(DatedMass mass, Role role) {
    return span.taken().planned().stream()
        .filter(one -> one.wearer().mass().equals(mass.id()) && one.wearer().role() == role)
        .map(PlannedWear::piece)
        .sorted()
        .map(this::name)
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  private String name(String code) {
    PooledPiece piece = pieces.get(code);
    return piece == null || piece.set().isEmpty() ? code : piece.set();
  }
}
