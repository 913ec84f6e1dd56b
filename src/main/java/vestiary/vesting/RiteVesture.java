package vestiary.vesting;

import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;

/** What is worn over alb or surplice at liturgies that are no Mass. */
final class RiteVesture {

  private static final String BENEDICTION = "Holy Communion and Worship of the Eucharist 92";
  private static final String PROCESSION = "GIRM 341";
  private static final String OTHER_RITES = "the rituals: alb or surplice, and stole (from memory)";
  private static final String COPE = "the rituals: a cope may be worn (from memory)";
  private static final String DEACONS_STOLE = "GIRM 338; GIRM 340";

  private final Asking asking;
  private final MassKind kind;
  private final Ministers ministers;

  private RiteVesture(Asking asking) {
    this.asking = asking;
    this.kind = asking.mass().kind();
    this.ministers = asking.mass().ministers();
  }

  static void ask(Asking asking) {
    RiteVesture vesture = new RiteVesture(asking);
    vesture.askForStoles();
    vesture.askForVeil();
    vesture.askForCope();
  }

  private void askForStoles() {
    PieceKind stole =
        ministers.presider() == Presider.DEACON ? PieceKind.DEACON_STOLE : PieceKind.STOLE;
    String source =
        switch (kind) {
          case BENEDICTION -> BENEDICTION;
          case PROCESSION -> PROCESSION;
          default -> OTHER_RITES;
        };
    asking.ask(Role.MINISTER, stole, Norm.must(source));
    asking.ask(Role.DEACON, PieceKind.DEACON_STOLE, Norm.must(DEACONS_STOLE));
  }

  private void askForVeil() {
    if (isBeforeTheSacrament()) {
      asking.ask(Role.MINISTER, PieceKind.HUMERAL_VEIL, Norm.must(BENEDICTION));
    }
  }

  /** Before the Blessed Sacrament the cope is white, whatever the day. */
  private void askForCope() {
    Colour colour = isBeforeTheSacrament() ? Colour.WHITE : asking.mass().colour().colour();
    switch (kind) {
      case BENEDICTION -> askForCope(colour, Norm.must(BENEDICTION));
      case PROCESSION -> askForCope(colour, Norm.may(PROCESSION));
      default -> {
        if (ministers.also().contains(PieceKind.COPE)) {
          askForCope(colour, Norm.may(COPE, Step.COPE_LEFT_OUT));
        }
      }
    }
  }

  private void askForCope(Colour colour, Norm norm) {
    asking.ask(Role.MINISTER, 1, PieceKind.COPE, colour, norm);
  }

  private boolean isBeforeTheSacrament() {
    return kind == MassKind.BENEDICTION || ministers.also().contains(PieceKind.HUMERAL_VEIL);
  }
}
