package vestiary.pool;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import vestiary.vesting.Grade;
import vestiary.vesting.PieceKind;

/** How vestments are carried unharmed: common practice, no source. */
public final class Cautions {

  private Cautions() {}

  /** What whoever carries these must know. */
  public static List<String> of(List<PooledPiece> pieces) {
    return of(
        pieces.stream().anyMatch(piece -> piece.grade().equals(Grade.SOLEMN.id())),
        pieces.stream().anyMatch(piece -> piece.kind() == PieceKind.MITRE));
  }

  /**
   * What whoever carries them must know.
   *
   * @param precious whether there are pieces for solemnities among them
   * @param mitre whether there is a mitre
   */
  public static List<String> of(boolean precious, boolean mitre) {
    List<String> said = new ArrayList<>();
    said.add(say("Each set hangs in its own garment bag, with its label on the hanger."));
    said.add(
        say(
            "What cannot hang lies flat, with white tissue in every fold, and nothing on top of it."));
    if (precious) {
      said.add(
          say(
              "There are precious pieces among these: two people lift them, and nobody leaves them in the car."));
    }
    if (mitre) {
      said.add(say("A mitre travels in its box."));
    }
    said.add(say("Keep them dry and out of the sun, and the car locked."));
    said.add(
        say(
            "Old silk and gold embroidery tear easily: ask a textile conservator, or leave them where they are."));
    return said;
  }
}
