package vestiary.movement;

import java.util.ArrayList;
import java.util.List;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Grade;
import vestiary.vesting.PieceKind;

/** How vestments are carried unharmed: common practice, no source. */
final class Cautions {

  private Cautions() {}

  static List<String> of(List<PooledPiece> pieces) {
    List<String> said = new ArrayList<>();
    said.add("Each set hangs in its own garment bag, with its label on the hanger.");
    said.add(
        "What cannot hang lies flat, with white tissue in every fold, and nothing on top of it.");
    if (pieces.stream().anyMatch(piece -> piece.grade().equals(Grade.SOLEMN.id()))) {
      said.add(
          "There are precious pieces among these: two people lift them, and nobody leaves them in the car.");
    }
    if (pieces.stream().anyMatch(piece -> piece.kind() == PieceKind.MITRE)) {
      said.add("A mitre travels in its box.");
    }
    said.add("Keep them dry and out of the sun, and the car locked.");
    said.add(
        "Old silk and gold embroidery tear easily: ask a textile conservator, or leave them where they are.");
    return said;
  }
}
