package vestiary.reservation;

import static vestiary.web.Speech.say;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.calendar.Term;
import vestiary.planning.PieceNouns;
import vestiary.pool.PooledPiece;
import vestiary.vesting.Grade;
import vestiary.vesting.PieceKind;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** Sets and pieces in the words of pages. */
final class WareWords {

  private WareWords() {}

  /** For example "chasuble and stole, Trinity whites, solemn, 132 cm". */
  static String what(Reservable thing) {
    PooledPiece main = thing.main();
    return String.join(
        ", ",
        Stream.of(kinds(thing), main.suit(), grade(main.grade()), size(main.size()))
            .filter(said -> !said.isEmpty())
            .toList());
  }

  static Ribbon ribbon(Reservable thing) {
    return new Ribbon(thing.main().colour(), Speech.colour(thing.main().colour()));
  }

  /** For example "Chasubles with what belongs to them". */
  static String group(PieceKind kind) {
    String noun = kind == PieceKind.OTHER ? "other piece" : PieceNouns.of(kind);
    return Speech.sentence(Speech.noun(2, noun).replace("deacon’s", "deacons’"));
  }

  private static String kinds(Reservable thing) {
    Set<String> kinds = new LinkedHashSet<>();
    kinds.add(Speech.noun(1, PieceNouns.of(thing.main().kind())));
    thing.pieces().forEach(piece -> kinds.add(Speech.noun(1, PieceNouns.of(piece.kind()))));
    return Speech.list(List.copyOf(kinds));
  }

  private static String grade(String id) {
    return Term.find(Grade.class, id)
        .map(
            grade ->
                switch (grade) {
                  case FERIAL -> say("ferial");
                  case FESTIVE -> say("festive");
                  case SOLEMN -> say("solemn");
                })
        .orElse(id);
  }

  private static String size(String size) {
    return size.matches("\\d+") ? say("%s cm", size) : size;
  }
}
