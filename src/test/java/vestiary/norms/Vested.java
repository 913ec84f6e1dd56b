package vestiary.norms;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.ChurchId;
import vestiary.vesting.KeptKinds;
import vestiary.vesting.MassColour;
import vestiary.vesting.MassId;
import vestiary.vesting.MassTime;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Sacristy;
import vestiary.vesting.VestedMass;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/** Liturgies of an hour in an invented church, and what they ask for in words. */
final class Vested {

  static final ChurchId CHURCH = new ChurchId(new UUID(0, 2));

  private Vested() {}

  static List<Need> needs(VestedMass mass) {
    return VestingNorms.needsOf(mass, VestingPolicies.DEFAULTS);
  }

  static List<Need> of(Role role, List<Need> needs) {
    return needs.stream().filter(need -> need.role() == role).toList();
  }

  static List<String> words(List<Need> needs) {
    return needs.stream()
        .map(need -> need.role().id() + " " + need.kind().id() + " " + need.colour().id())
        .toList();
  }

  /** The usual policies, but for the counting of albs and a bishop's pieces. */
  static VestingPolicies policies(boolean countAlbs, boolean pontificals) {
    VestingPolicies usual = VestingPolicies.DEFAULTS;
    return new VestingPolicies(
        usual.weekdaySetOut(),
        usual.largeSetOut(),
        usual.largeClearance(),
        usual.turn(),
        usual.ladderOrder(),
        usual.whiteForAll(),
        countAlbs,
        pontificals);
  }

  /** One white piece of each kind on the list of the church. */
  static KeptKinds kept(List<PieceKind> kinds) {
    return KeptKinds.of(kinds.stream().map(kind -> piece(kind, CHURCH)).toList());
  }

  static Piece piece(PieceKind kind, ChurchId home) {
    return new Piece(kind.id(), kind, List.of(Colour.WHITE), home, false, "", List.of());
  }

  static Ministers ministers(int concelebrants, int deacons) {
    return new Ministers(false, concelebrants, deacons, List.of());
  }

  static VestedMass mass(Colour colour, Ministers ministers) {
    return mass(colour, false, ministers);
  }

  static VestedMass mass(Colour colour, boolean festive, Ministers ministers) {
    return liturgy(MassKind.OF_THE_DAY, colour, festive, ministers);
  }

  static VestedMass liturgy(MassKind kind, Colour colour, Ministers ministers) {
    return liturgy(kind, colour, false, ministers);
  }

  private static VestedMass liturgy(
      MassKind kind, Colour colour, boolean festive, Ministers ministers) {
    return new VestedMass(
        new MassId(new UUID(0, 1)),
        CHURCH,
        kind,
        new MassTime(
            Instant.parse("2026-12-13T16:00:00Z"),
            Duration.ofMinutes(60),
            true,
            new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15)),
            Duration.ZERO),
        new MassColour(colour, colour == Colour.ROSE, festive),
        ministers);
  }
}
