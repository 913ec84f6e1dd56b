package vestiary.onemore;

import static vestiary.web.Speech.say;

import java.util.List;
import java.util.stream.Collectors;
import vestiary.planning.PieceNouns;
import vestiary.planning.StepWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Need;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.web.Speech;

/** Ways to vest somebody, in words. */
final class WayWords {

  private WayWords() {}

  /** For example "In white, as he should be" or "In alb and stole". */
  static String title(Way way) {
    if (way.isOwn()) {
      return say("He has brought his own");
    }
    return way.steps().isEmpty()
        ? say("In %s", Speech.colour(way.given().get(0).piece().colour()))
        : Speech.sentence(StepWords.worn(way.steps().get(0).step()));
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
    return "%s %s%s%s"
        .formatted(Speech.noun(1, PieceNouns.of(piece.kind())), piece.code(), size, place);
  }

  /** What must come from the cupboard, since no list has it free; empty if nothing must. */
  static String lacking(Way way) {
    if (way.isOwn()) {
      return "";
    }
    List<String> kinds =
        way.lacking().stream()
            .map(Need::kind)
            .map(kind -> Speech.noun(1, PieceNouns.of(kind)))
            .distinct()
            .toList();
    return kinds.isEmpty()
        ? ""
        : say("No %s of the list is free here: look in the cupboard.", Speech.choice(kinds));
  }

  /**
   * What the norms let him do where nothing is at hand.
   *
   * <p>Source: GIRM 209 and 114 (114 from memory); for deacons GIRM 338.
   */
  static String nothing(Role role, String colour) {
    return role == Role.DEACON
        ? say(
            "Nothing %s is free here for a deacon. He needs at least an alb and a deacon’s stole; the dalmatic may be left out of necessity (GIRM 338).",
            colour)
        : say(
            "Nothing %s is free here. For a just cause, as when there are too few vestments, he may concelebrate in alb and stole (GIRM 209). Without these he takes part in choir dress, or in a surplice over the cassock (GIRM 114).",
            colour);
  }

  /** For example "One concelebrant more, in alb and stole: SA-W3-S." */
  static String done(OneMoreRow row) {
    String how =
        row.own
            ? say(", in his own")
            : row.steps.isEmpty() ? "" : ", " + StepWords.worn(row.steps.get(0).toStep());
    String pieces = row.pieces.length == 0 ? "" : ": " + Speech.list(List.of(row.pieces));
    return say("One %s more%s%s.", Speech.noun(1, row.role), how, pieces);
  }
}
