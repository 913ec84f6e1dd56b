package vestiary.vesting;

import vestiary.calendar.Colour;

/**
 * What a bishop wears at Mass besides, where the cluster asks the pool for it: none of it a must.
 */
final class PontificalVesture {

  private static final String DALMATIC = "Ceremonial of Bishops 56";
  private static final String MITRE = "Ceremonial of Bishops 57 and 60";
  private static final String VIMPA = "common practice, no source";

  /** One for him who holds the mitre, one for him who holds the staff. */
  private static final int HOLDERS = 2;

  private PontificalVesture() {}

  /** A mitre is the bishop's own, so it is asked for only where some church keeps one by list. */
  static void ask(Asking asking, VestingPolicies policies, KeptKinds kept) {
    VestedMass mass = asking.mass();
    if (!policies.pontificals() || !mass.ministers().bishop() || !mass.kind().isMass()) {
      return;
    }
    asking.ask(Role.PRINCIPAL, PieceKind.DALMATIC, Norm.may(DALMATIC, steps(mass)));
    asking.ask(Role.SERVER, HOLDERS, PieceKind.VIMPA, Norm.may(VIMPA, Step.VIMPA_LEFT_OUT));
    if (kept.anywhere(PieceKind.MITRE)) {
      asking.ask(Role.PRINCIPAL, PieceKind.MITRE, Norm.may(MITRE));
    }
  }

  private static Step[] steps(VestedMass mass) {
    return mass.colour().colour() == Colour.WHITE
        ? new Step[] {Step.CHASUBLE_ALONE}
        : new Step[] {Step.WHITE_DALMATIC, Step.CHASUBLE_ALONE};
  }
}
