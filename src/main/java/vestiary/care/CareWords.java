package vestiary.care;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.stream.Stream;
import vestiary.pool.Care;
import vestiary.pool.CareKind;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.web.Choice;
import vestiary.web.Speech;

/** How pages say what is wrong with a piece and how long it is away. */
final class CareWords {

  private CareWords() {}

  /** What can be wrong, to choose from. */
  static Stream<Choice.Option> kinds() {
    return Arrays.stream(CareKind.values()).map(k -> Choice.Option.of(k.id(), k.words()));
  }

  /** For example "Chasuble HT-W1-C". */
  static String title(PooledPiece piece) {
    return Speech.sentence(PieceWords.kind(piece.kind())) + " " + piece.code();
  }

  /** For example "At the cleaner: wax at the hem"; the word alone where nothing was added. */
  static String reason(Care care) {
    String word = care.kind().words();
    return care.kind() == CareKind.OTHER || care.reason().startsWith(word)
        ? care.reason()
        : "%s: %s".formatted(word, care.reason());
  }

  /** Why it is late, as a sentence; empty if it is not. */
  static String late(Care care, ZoneId zone) {
    return care.findMissed()
        .map(missed -> say("It should have been back by %s.", lastDay(missed, zone)))
        .orElse("");
  }

  private static String lastDay(Instant end, ZoneId zone) {
    LocalDate last = end.minusNanos(1).atZone(zone).toLocalDate();
    return Speech.dateAndYear(last);
  }
}
