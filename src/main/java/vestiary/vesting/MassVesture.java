package vestiary.vesting;

import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/** What celebrants, deacons and the newly ordained wear over the alb at Mass and on Good Friday. */
final class MassVesture {

  private static final String MASS = "GIRM 337; RS 123";
  private static final String CONCELEBRATION = "GIRM 209; RS 124";
  private static final String WHITE_FOR_ALL =
      "white for all concelebrants: policy of the cluster, common practice";
  private static final String DEACON = "GIRM 338";
  private static final String DEACONS_STOLE = "GIRM 338; GIRM 340";
  private static final String GOOD_FRIDAY = "Roman Missal, Good Friday 5";
  private static final String COPE = "GIRM 341";
  private static final String CARRYING = "Holy Communion and Worship of the Eucharist 92 and 105";
  private static final String THURSDAY =
      "Roman Missal, Thursday of the Lord's Supper 37 (from memory)";
  private static final String FRIDAY =
      "Ceremonial of Bishops 325; Roman Missal, Good Friday 22 (from memory);"
          + " white: common practice, no source";
  private static final String NEW_PRIESTS = "Rites of Ordination, of priests (from memory)";
  private static final String NEW_DEACONS = "Rites of Ordination, of deacons (from memory)";

  private final Asking asking;
  private final VestedMass mass;
  private final VestingPolicies policies;

  private MassVesture(Asking asking, VestingPolicies policies) {
    this.asking = asking;
    this.mass = asking.mass();
    this.policies = policies;
  }

  static void ask(Asking asking, VestingPolicies policies) {
    MassVesture vesture = new MassVesture(asking, policies);
    vesture.askForCelebrants();
    vesture.askForDeacons();
    vesture.askForNewlyOrdained();
    vesture.askForCope();
    vesture.askForVeil();
  }

  private void askForCelebrants() {
    Norm principal = Norm.must(mass.kind() == MassKind.GOOD_FRIDAY ? GOOD_FRIDAY : MASS);
    asking.ask(Role.PRINCIPAL, PieceKind.CHASUBLE, principal);
    asking.ask(Role.PRINCIPAL, PieceKind.STOLE, principal);
    int concelebrants = asking.persons(Role.CONCELEBRANT);
    Colour colour = isWhiteForAll() ? Colour.WHITE : mass.colour().colour();
    String source = isWhiteForAll() ? WHITE_FOR_ALL : CONCELEBRATION;
    Norm chasuble = Norm.may(source, chasubleSteps(colour));
    asking.ask(Role.CONCELEBRANT, concelebrants, PieceKind.CHASUBLE, colour, chasuble);
    asking.ask(Role.CONCELEBRANT, concelebrants, PieceKind.STOLE, colour, Norm.must(source));
  }

  private Step[] chasubleSteps(Colour colour) {
    if (colour == Colour.WHITE) {
      return new Step[] {Step.STOLE_OVER_ALB};
    }
    return policies.ladderOrder() == LadderOrder.STOLE
        ? new Step[] {Step.STOLE_OVER_ALB, Step.WHITE_CHASUBLE}
        : new Step[] {Step.WHITE_CHASUBLE, Step.STOLE_OVER_ALB};
  }

  private boolean isWhiteForAll() {
    return policies.whiteForAll() && mass.ministers().areMany();
  }

  private void askForDeacons() {
    asking.ask(Role.DEACON, PieceKind.DALMATIC, Norm.may(DEACON, Step.DALMATIC_LEFT_OUT));
    asking.ask(Role.DEACON, PieceKind.DEACON_STOLE, Norm.must(DEACONS_STOLE));
  }

  /** They come vested for the order they have, and are clothed with the vestments of the new. */
  private void askForNewlyOrdained() {
    Norm priest = Norm.must(NEW_PRIESTS);
    asking.ask(Role.NEW_PRIEST, PieceKind.DEACON_STOLE, priest);
    asking.ask(Role.NEW_PRIEST, PieceKind.STOLE, priest);
    asking.ask(Role.NEW_PRIEST, PieceKind.CHASUBLE, priest);
    asking.ask(Role.NEW_DEACON, PieceKind.DEACON_STOLE, Norm.must(NEW_DEACONS));
    asking.ask(
        Role.NEW_DEACON,
        PieceKind.DALMATIC,
        Norm.may(NEW_DEACONS + "; " + DEACON, Step.DALMATIC_LEFT_OUT));
  }

  private void askForCope() {
    if (mass.ministers().also().contains(PieceKind.COPE)) {
      boolean withSacrament = mass.ministers().also().contains(PieceKind.HUMERAL_VEIL);
      asking.ask(
          Role.PRINCIPAL,
          1,
          PieceKind.COPE,
          withSacrament ? Colour.WHITE : mass.colour().colour(),
          Norm.may(COPE, Step.CHASUBLE_FOR_COPE));
    }
  }

  private void askForVeil() {
    switch (mass.kind()) {
      case LORDS_SUPPER -> asking.ask(Role.PRINCIPAL, PieceKind.HUMERAL_VEIL, Norm.must(THURSDAY));
      case GOOD_FRIDAY ->
          asking.ask(
              mass.ministers().deacons() > 0 ? Role.DEACON : Role.PRINCIPAL,
              1,
              PieceKind.HUMERAL_VEIL,
              Norm.must(FRIDAY, Step.RED_VEIL));
      default -> {
        if (mass.ministers().also().contains(PieceKind.HUMERAL_VEIL)) {
          asking.ask(Role.PRINCIPAL, PieceKind.HUMERAL_VEIL, Norm.must(CARRYING));
        }
      }
    }
  }
}
