package vestiary.reservation;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import vestiary.planning.PieceNouns;
import vestiary.pool.PooledPiece;
import vestiary.vesting.PieceKind;
import vestiary.web.English;
import vestiary.web.Ribbon;

/** Sets and pieces in the words of pages. */
final class WareWords {

  private WareWords() {}

  /** For example "chasuble and stole, Trinity whites, solemn, 132 cm". */
  static String what(Reservable thing) {
    PooledPiece main = thing.main();
    return String.join(
        ", ",
        Stream.of(kinds(thing), main.suit(), main.grade(), size(main.size()))
            .filter(said -> !said.isEmpty())
            .toList());
  }

  static Ribbon ribbon(Reservable thing) {
    return new Ribbon(thing.main().colour(), thing.main().colour().id());
  }

  /** For example "Chasubles with what belongs to them". */
  static String group(PieceKind kind) {
    return English.sentence(PieceNouns.of(kind).replace("deacon's", "deacons'"))
        + (kind == PieceKind.OTHER ? " pieces" : "s");
  }

  private static String kinds(Reservable thing) {
    Set<String> kinds = new LinkedHashSet<>();
    kinds.add(PieceNouns.of(thing.main().kind()));
    thing.pieces().forEach(piece -> kinds.add(PieceNouns.of(piece.kind())));
    return English.list(List.copyOf(kinds));
  }

  private static String size(String size) {
    return size.matches("\\d+") ? size + " cm" : size;
  }
}
