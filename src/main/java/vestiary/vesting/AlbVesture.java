package vestiary.vesting;

/** Albs with amice and cincture, in a church that keeps them by list. */
final class AlbVesture {

  private static final String ALB = "GIRM 119 and 336";
  private static final String LAY = "GIRM 119 and 339";
  private static final String RITES = "the rituals: alb or surplice, and stole (from memory)";

  private AlbVesture() {}

  static void ask(Asking asking, KeptKinds kept) {
    for (Role role : Role.values()) {
      if (role != Role.DECEASED) {
        ask(asking, role, PieceKind.ALB, alb(role, asking.mass()), kept);
        Norm besides = Norm.may(ALB, Step.ALB_ALONE);
        ask(asking, role, PieceKind.AMICE, besides, kept);
        ask(asking, role, PieceKind.CINCTURE, besides, kept);
      }
    }
  }

  private static void ask(Asking asking, Role role, PieceKind kind, Norm norm, KeptKinds kept) {
    if (kept.at(asking.mass().church(), kind)) {
      asking.ask(role, kind, norm);
    }
  }

  private static Norm alb(Role role, VestedMass mass) {
    if (role.isLay()) {
      return Norm.may(LAY, Step.OTHER_DRESS);
    }
    return mass.isVestedAsMass() ? Norm.must(ALB) : Norm.may(RITES, Step.SURPLICE_FOR_ALB);
  }
}
