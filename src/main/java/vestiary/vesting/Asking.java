package vestiary.vesting;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/** Gathers what one Mass asks of the pool; who brings a piece of his own asks for none. */
final class Asking {

  /** Worn in white whatever the Mass, or of no colour at all. */
  private static final Set<PieceKind> WHITE =
      EnumSet.of(
          PieceKind.ALB,
          PieceKind.AMICE,
          PieceKind.CINCTURE,
          PieceKind.HUMERAL_VEIL,
          PieceKind.MITRE,
          PieceKind.VIMPA,
          PieceKind.PALL);

  private final VestedMass mass;
  private final Window window;
  private final List<Need> needs = new ArrayList<>();

  Asking(VestedMass mass, VestingPolicies policies) {
    this.mass = mass;
    this.window = Window.of(mass, policies);
  }

  VestedMass mass() {
    return mass;
  }

  /** In canonical order. */
  List<Need> needs() {
    return needs.stream().sorted().toList();
  }

  /** How many vest in a role at this Mass. */
  int persons(Role role) {
    boolean asMass = mass.isVestedAsMass();
    Ministers ministers = mass.ministers();
    return switch (role) {
      case PRINCIPAL -> asMass ? 1 : 0;
      case MINISTER -> asMass ? 0 : 1;
      case CONCELEBRANT -> asMass ? ministers.concelebrants() : 0;
      case DEACON -> ministers.deacons();
      case NEW_PRIEST, NEW_DEACON ->
          mass.kind() == MassKind.ORDINATION ? ministers.further(role) : 0;
      case ACOLYTE, READER, SERVER, OTHER -> ministers.further(role);
      case DECEASED -> 1;
    };
  }

  /** Asks for everybody of the role, in the colour of the Mass or of the piece. */
  void ask(Role role, PieceKind kind, Norm norm) {
    ask(role, persons(role), kind, norm);
  }

  /** Asks for so many of the role, counted from the first. */
  void ask(Role role, int persons, PieceKind kind, Norm norm) {
    ask(role, persons, kind, WHITE.contains(kind) ? Colour.WHITE : mass.colour().colour(), norm);
  }

  /** Asks for so many of the role in that colour. */
  void ask(Role role, int persons, PieceKind kind, Colour colour, Norm norm) {
    // The last in number are taken to bring their own: which of them it is makes no difference.
    int asking = persons - mass.ministers().bringing(role, kind);
    Norm whole = withVioletForRose(colour, norm);
    IntStream.rangeClosed(1, asking)
        .mapToObj(number -> need(new Wearer(mass.id(), role, number), kind, colour, whole))
        .forEach(needs::add);
  }

  private Need need(Wearer wearer, PieceKind kind, Colour colour, Norm norm) {
    return new Need(
        wearer,
        mass.church(),
        window,
        kind,
        colour,
        mass.colour().festive(),
        norm,
        preferred(wearer, kind, colour));
  }

  private Make preferred(Wearer wearer, PieceKind kind, Colour colour) {
    Occasion occasion = mass.occasion();
    String size =
        kind == PieceKind.ALB ? mass.ministers().size(wearer.role(), wearer.ordinal()) : "";
    return new Make(
        occasion.shade(colour), occasion.grade(mass.kind(), mass.ministers().bishop()).id(), size);
  }

  private Norm withVioletForRose(Colour colour, Norm norm) {
    if (colour != Colour.ROSE || !mass.colour().roseDay()) {
      return norm;
    }
    List<Step> ladder = new ArrayList<>(List.of(Step.VIOLET_FOR_ROSE));
    ladder.addAll(norm.ladder());
    return new Norm(norm.must(), ladder, norm.source());
  }
}
