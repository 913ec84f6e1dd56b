package vestiary.onemore;

import java.util.List;
import java.util.stream.Collectors;
import vestiary.planning.PieceNouns;
import vestiary.planning.StepWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Need;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.web.English;

/** Ways to vest somebody, in words. */
final class WayWords {

  private WayWords() {}

  /** For example "In white, as he should be" or "In alb and stole". */
  static String title(Way way) {
    if (way.isOwn()) {
      return "He has brought his own";
    }
    return way.steps().isEmpty()
        ? "In " + way.given().get(0).piece().colour().id()
        : English.sentence(StepWords.worn(way.steps().get(0).step()));
  }

  /** The norm that lets him take a step; empty where he takes none. */
  static String source(Way way) {
    return way.steps().stream()
        .map(Way.Taken::step)
        .map(Step::source)
        .distinct()
        .collect(Collectors.joining("; "));
  }

  /** What he puts on and where it is, piece by piece. */
  static List<String> pieces(Way way) {
    return way.given().stream().map(one -> piece(one.piece())).toList();
  }

  private static String piece(PooledPiece piece) {
    String size =
        piece.size().isEmpty()
            ? ""
            : ", " + (piece.size().matches("\\d+") ? piece.size() + " cm" : piece.size());
    String place = piece.place().isEmpty() ? "" : ": " + piece.place();
    return "%s %s%s%s".formatted(PieceNouns.of(piece.kind()), piece.code(), size, place);
  }

  /** What must come from the cupboard, since no list has it free; empty if nothing must. */
  static String lacking(Way way) {
    if (way.isOwn()) {
      return "";
    }
    List<String> kinds =
        way.lacking().stream().map(Need::kind).map(PieceNouns::of).distinct().toList();
    return kinds.isEmpty()
        ? ""
        : "No %s of the list is free here: look in the cupboard.".formatted(English.choice(kinds));
  }

  /**
   * What the norms let him do where nothing is at hand.
   *
   * <p>Source: GIRM 209 and 114 (114 from memory); for deacons GIRM 338.
   */
  static String nothing(Role role, String colour) {
    return role == Role.DEACON
        ? "Nothing %s is free here for a deacon. He needs at least an alb and a deacon’s stole; the dalmatic may be left out of necessity (GIRM 338)."
            .formatted(colour)
        : "Nothing %s is free here. For a just cause, as when there are too few vestments, he may concelebrate in alb and stole (GIRM 209). Without these he takes part in choir dress, or in a surplice over the cassock (GIRM 114)."
            .formatted(colour);
  }

  /** For example "One concelebrant more, in alb and stole: SA-W3-S." */
  static String done(OneMoreRow row) {
    String how =
        row.own
            ? ", in his own"
            : row.steps.isEmpty() ? "" : ", " + StepWords.worn(row.steps.get(0).toStep());
    String pieces = row.pieces.length == 0 ? "" : ": " + English.list(List.of(row.pieces));
    return "One %s more%s%s.".formatted(row.role, how, pieces);
  }
}
