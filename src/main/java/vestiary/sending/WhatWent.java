package vestiary.sending;

import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.pool.PieceWords;
import vestiary.pool.PooledPiece;
import vestiary.vesting.PieceKind;
import vestiary.web.Speech;

/**
 * What a piece was when it went out. It is kept in words, since the piece may be gone from the list
 * later, and said in the language of whoever reads it.
 */
final class WhatWent {

  private WhatWent() {}

  /** For example "white chasuble". */
  static String of(PooledPiece piece) {
    return of(piece.colour(), piece.kind());
  }

  /** What is to be kept of it, whoever sends it. */
  static String kept(PooledPiece piece) {
    return Speech.forTheRecord(() -> of(piece));
  }

  /** What was kept, for whoever reads it now; words that were never kept so, as they are. */
  static String said(String kept) {
    return Speech.isOfTheRecord() ? kept : readings(kept).findFirst().orElse(kept);
  }

  private static Stream<String> readings(String kept) {
    return Stream.of(Colour.values())
        .filter(colour -> kept.startsWith(colour.id()))
        .flatMap(
            colour ->
                Stream.of(PieceKind.values())
                    .filter(kind -> Speech.forTheRecord(() -> of(colour, kind)).equals(kept))
                    .map(kind -> of(colour, kind)));
  }

  private static String of(Colour colour, PieceKind kind) {
    return Speech.tinted(Speech.colour(colour), PieceWords.kind(kind));
  }
}
