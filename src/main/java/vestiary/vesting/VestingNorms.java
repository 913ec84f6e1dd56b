package vestiary.vesting;

import java.util.List;
import vestiary.calendar.MassKind;

/** From a Mass to what its ministers wear, by the norms of vesture. */
public final class VestingNorms {

  private static final String PALL = "Order of Christian Funerals 38";

  private VestingNorms() {}

  /** What the pool is asked for where nobody counts albs, amices, cinctures, mitres or palls. */
  public static List<Need> needsOf(VestedMass mass, VestingPolicies policies) {
    return needsOf(mass, policies, KeptKinds.NONE);
  }

  /**
   * What the pool is asked for at one Mass or other liturgy, in canonical order. Empty only if
   * everybody brings his own.
   *
   * <p>At Mass, and on Good Friday as at Mass: chasuble and stole for the principal celebrant and
   * each concelebrant, dalmatic and stole for each deacon, and what is put on for a procession, for
   * carrying the Blessed Sacrament, by a bishop, by the newly ordained. At other liturgies: a
   * stole, with cope and humeral veil where the rite has them. Then the albs of all, and at a
   * funeral the pall.
   *
   * @param kept which kinds each church keeps by list: albs, amices, cinctures and palls are asked
   *     for in those churches alone that keep the kind, a mitre if any church does
   */
  public static List<Need> needsOf(VestedMass mass, VestingPolicies policies, KeptKinds kept) {
    Asking asking = new Asking(mass, policies);
    if (mass.isVestedAsMass()) {
      MassVesture.ask(asking, policies);
      PontificalVesture.ask(asking, policies, kept);
    } else {
      RiteVesture.ask(asking);
    }
    if (policies.countAlbs()) {
      AlbVesture.ask(asking, kept);
    }
    if (isFuneral(mass.kind()) && kept.at(mass.church(), PieceKind.PALL)) {
      asking.ask(Role.DECEASED, PieceKind.PALL, Norm.may(PALL, Step.PALL_LEFT_OUT));
    }
    return asking.needs();
  }

  private static boolean isFuneral(MassKind kind) {
    return kind == MassKind.FUNERAL || kind == MassKind.FUNERAL_OUTSIDE_MASS;
  }
}
