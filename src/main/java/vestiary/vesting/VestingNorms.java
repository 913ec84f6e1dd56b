package vestiary.vesting;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/**
 * From a Mass to what its ministers wear, by the norms of vesture. Albs, amices and cinctures are
 * not asked for.
 */
public final class VestingNorms {

  private static final String MASS = "GIRM 337; RS 123";
  private static final String CONCELEBRATION = "GIRM 209; RS 124";
  private static final String WHITE_FOR_ALL =
      "white for all concelebrants: policy of the cluster, common practice";
  private static final String DEACON = "GIRM 338";
  private static final String DEACONS_STOLE = "GIRM 338; GIRM 340";
  private static final String GOOD_FRIDAY = "Roman Missal, Good Friday 5";
  private static final String BENEDICTION = "Holy Communion and Worship of the Eucharist 92";
  private static final String PROCESSION = "GIRM 341";
  private static final String OTHER_RITES = "the rituals: alb or surplice, and stole";

  private final VestedMass mass;
  private final VestingPolicies policies;
  private final Window window;
  private final List<Need> needs = new ArrayList<>();

  private VestingNorms(VestedMass mass, VestingPolicies policies) {
    this.mass = mass;
    this.policies = policies;
    this.window = Window.of(mass, policies);
  }

  /**
   * What the pool is asked for at one Mass or other liturgy, in canonical order. Empty only if
   * everybody brings his own.
   *
   * <p>At Mass, and on Good Friday as at Mass: chasuble and stole for the principal celebrant and
   * each concelebrant, dalmatic and stole for each deacon. At Benediction: cope, white humeral veil
   * and stole; in a procession: cope and stole; at other rites: a stole. A deacon who assists at
   * these wears his stole.
   */
  public static List<Need> needsOf(VestedMass mass, VestingPolicies policies) {
    VestingNorms norms = new VestingNorms(mass, policies);
    if (mass.kind().isMass() || mass.kind() == MassKind.GOOD_FRIDAY) {
      norms.askForMass();
    } else {
      norms.askForOtherLiturgy();
    }
    return norms.needs.stream().sorted().toList();
  }

  private void askForMass() {
    String source = mass.kind() == MassKind.GOOD_FRIDAY ? GOOD_FRIDAY : MASS;
    ask(Role.PRINCIPAL, PieceKind.CHASUBLE, must(source));
    ask(Role.PRINCIPAL, PieceKind.STOLE, must(source));
    askForConcelebrants();
    ask(Role.DEACON, PieceKind.DALMATIC, may(DEACON, Step.DALMATIC_LEFT_OUT));
    ask(Role.DEACON, PieceKind.DEACON_STOLE, must(DEACONS_STOLE));
  }

  private void askForConcelebrants() {
    String source = isWhiteForAll() ? WHITE_FOR_ALL : CONCELEBRATION;
    ask(Role.CONCELEBRANT, PieceKind.CHASUBLE, may(source, chasubleSteps()));
    ask(Role.CONCELEBRANT, PieceKind.STOLE, must(source));
  }

  private void askForOtherLiturgy() {
    switch (mass.kind()) {
      case BENEDICTION -> {
        ask(Role.MINISTER, PieceKind.COPE, must(BENEDICTION));
        ask(Role.MINISTER, PieceKind.HUMERAL_VEIL, must(BENEDICTION));
        ask(Role.MINISTER, PieceKind.STOLE, must(BENEDICTION));
      }
      case PROCESSION -> {
        ask(Role.MINISTER, PieceKind.COPE, may(PROCESSION));
        ask(Role.MINISTER, PieceKind.STOLE, must(PROCESSION));
      }
      default -> ask(Role.MINISTER, PieceKind.STOLE, must(OTHER_RITES));
    }
    ask(Role.DEACON, PieceKind.DEACON_STOLE, must(DEACONS_STOLE));
  }

  private void ask(Role role, PieceKind kind, Norm norm) {
    // The last in number are taken to bring their own: which of them it is makes no difference.
    int asking = persons(role) - mass.ministers().bringing(role, kind);
    Colour colour = colourFor(role, kind);
    IntStream.rangeClosed(1, asking)
        .mapToObj(number -> new Wearer(mass.id(), role, number))
        .map(w -> new Need(w, mass.church(), window, kind, colour, mass.colour().festive(), norm))
        .forEach(needs::add);
  }

  private int persons(Role role) {
    return switch (role) {
      case PRINCIPAL, MINISTER -> 1;
      case CONCELEBRANT -> mass.ministers().concelebrants();
      case DEACON -> mass.ministers().deacons();
    };
  }

  private Colour colourFor(Role role, PieceKind kind) {
    boolean white =
        kind == PieceKind.HUMERAL_VEIL || (role == Role.CONCELEBRANT && isWhiteForAll());
    return white ? Colour.WHITE : mass.colour().colour();
  }

  private boolean isWhiteForAll() {
    return policies.whiteForAll() && mass.ministers().areMany();
  }

  private Step[] chasubleSteps() {
    Step[] steps =
        policies.ladderOrder() == LadderOrder.STOLE
            ? new Step[] {Step.STOLE_OVER_ALB, Step.WHITE_CHASUBLE}
            : new Step[] {Step.WHITE_CHASUBLE, Step.STOLE_OVER_ALB};
    boolean white = isWhiteForAll() || mass.colour().colour() == Colour.WHITE;
    return white ? new Step[] {Step.STOLE_OVER_ALB} : steps;
  }

  private Norm must(String source) {
    return new Norm(true, ladder(), source);
  }

  private Norm may(String source, Step... steps) {
    return new Norm(false, ladder(steps), source);
  }

  private List<Step> ladder(Step... steps) {
    List<Step> ladder = new ArrayList<>(List.of(steps));
    if (mass.colour().roseDay() && mass.colour().colour() == Colour.ROSE) {
      ladder.add(0, Step.VIOLET_FOR_ROSE);
    }
    return ladder;
  }
}
