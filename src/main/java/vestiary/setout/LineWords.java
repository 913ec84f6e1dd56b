package vestiary.setout;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.planning.PieceNouns;
import vestiary.planning.StepWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.web.DayWords;
import vestiary.web.NormWords;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** What lies on the table, piece by piece, in words. */
final class LineWords {

  private LineWords() {}

  /** A pile, lowest first; what lies together and says the same stands in one line. */
  static List<SetOutView.Line> lines(List<SetOut.Line> lines) {
    List<SetOutView.Line> told = new ArrayList<>();
    for (SetOut.Line line : lines) {
      SetOutView.Line one = line(line);
      int last = told.size() - 1;
      if (last >= 0 && line.findPiece().isEmpty() && isAlike(told.get(last), one)) {
        told.set(last, joined(told.get(last), one));
      } else {
        told.add(one);
      }
    }
    return told;
  }

  private static boolean isAlike(SetOutView.Line one, SetOutView.Line other) {
    return one.state().isEmpty()
        && one.isLaid()
        && other.isLaid()
        && one.ribbons().equals(other.ribbons())
        && one.where().equals(other.where())
        && one.note().equals(other.note());
  }

  private static SetOutView.Line joined(SetOutView.Line one, SetOutView.Line other) {
    return new SetOutView.Line(
        one.what() + ", " + other.what(), one.ribbons(), one.where(), one.note(), "", true);
  }

  private static SetOutView.Line line(SetOut.Line line) {
    return new SetOutView.Line(
        what(line),
        ribbons(line.kind(), line),
        where(line),
        note(line),
        line.state(),
        line.whence() != SetOut.Whence.LEFT_OUT);
  }

  private static String what(SetOut.Line line) {
    String noun = Speech.noun(1, PieceNouns.of(line.kind()));
    String size = line.need().preferred().size();
    String wanted = size.isEmpty() ? noun : "%s, %s".formatted(noun, sized(size));
    return line.findPiece()
        .map(piece -> "%s %s%s".formatted(noun, piece.code(), size(piece)))
        .orElse(line.whence() == SetOut.Whence.LEFT_OUT ? say("no %s", noun) : wanted);
  }

  /** For example ", 132 cm"; empty where no size is known. */
  static String size(PooledPiece piece) {
    return piece.size().isEmpty() ? "" : ", " + sized(piece.size());
  }

  private static String sized(String size) {
    return size.matches("\\d{2,3}") ? say("%s cm", size) : say("size %s", size);
  }

  private static List<Ribbon> ribbons(PieceKind kind, SetOut.Line line) {
    return PieceNouns.hasColour(kind) && line.whence() != SetOut.Whence.LEFT_OUT
        ? List.of(DayWords.ribbon(line.colour()))
        : List.of();
  }

  private static String where(SetOut.Line line) {
    return switch (line.whence()) {
      case BROUGHT -> say("brings his own");
      case OPEN -> say("none is named yet");
      case CUPBOARD, POOL -> line.where();
      case LEFT_OUT -> "";
    };
  }

  private static String note(SetOut.Line line) {
    String serves =
        line.findPiece()
            .filter(piece -> piece.colour() != line.need().colour())
            .filter(piece -> PieceNouns.hasColour(piece.kind()))
            .map(piece -> say("serves as %s", Speech.colour(line.need().colour())))
            .orElse("");
    return Stream.concat(line.steps().stream().map(LineWords::worn), Stream.of(serves, line.fit()))
        .filter(words -> !words.isEmpty())
        .collect(Collectors.joining("; "));
  }

  private static String worn(Step step) {
    return "%s (%s)".formatted(StepWords.worn(step), NormWords.source(step.source()));
  }
}
