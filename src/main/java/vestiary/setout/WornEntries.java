package vestiary.setout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import vestiary.pool.Worn;
import vestiary.web.Entries;

/** What was worn, between the form and the use case. */
final class WornEntries {

  static final String BESIDES = "besides";
  static final String NO = "no";

  private WornEntries() {}

  static String worn(String piece) {
    return "worn-" + piece;
  }

  static String instead(String piece) {
    return "instead-" + piece;
  }

  static Entries from(WornOfMass found) {
    Entries entries = Entries.empty().with(BESIDES, WornSheet.besides(found.besides()));
    for (WornOfMass.Line line : found.lines()) {
      entries =
          entries
              .with(worn(line.piece()), line.worn() ? "yes" : NO)
              .with(instead(line.piece()), line.instead());
    }
    return entries;
  }

  /** What stands in for a piece says by itself that the piece was not worn. */
  static List<Worn> read(Entries typed) {
    List<Worn> said = new ArrayList<>();
    for (String field : typed.values().keySet()) {
      if (field.startsWith("worn-")) {
        String piece = field.substring("worn-".length());
        String other = typed.text(instead(piece)).strip();
        if (!other.isEmpty()) {
          said.add(new Worn(piece, false, ""));
          said.add(new Worn(other, true, piece));
        } else if (typed.text(field).equals(NO)) {
          said.add(new Worn(piece, false, ""));
        }
      }
    }
    Stream.of(typed.text(BESIDES).split("[,;]"))
        .filter(code -> !code.isBlank())
        .map(code -> new Worn(code.strip(), true, ""))
        .forEach(said::add);
    return said;
  }
}
