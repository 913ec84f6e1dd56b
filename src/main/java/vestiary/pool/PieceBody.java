package vestiary.pool;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import vestiary.calendar.Term;

/** A piece as the API writes it; the first of its colours is what it is. */
record PieceBody(
    String code,
    String kind,
    List<String> colours,
    String shade,
    String grade,
    String size,
    String form,
    String set,
    String suit,
    String home,
    String owner,
    String ownerPolicy,
    String condition,
    String place,
    Boolean staysHome,
    @Schema(readOnly = true) List<CareBody> care) {

  /**
   * Care as the API writes it: local times with offset, half-open; no end means until further
   * notice.
   */
  record CareBody(@Schema(readOnly = true) String id, String from, String to, String reason) {
    static CareBody from(Care care, ZoneId zone) {
      return new CareBody(
          care.id().toString(),
          local(care.from(), zone),
          care.findEnd().map(e -> local(e, zone)).orElse(null),
          care.reason());
    }

    private static String local(Instant moment, ZoneId zone) {
      return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
    }
  }

  static PieceBody from(PooledPiece piece, String home, ZoneId zone) {
    return new PieceBody(
        piece.code(),
        piece.kind().id(),
        piece.colours().stream().map(Term::id).toList(),
        given(piece.shade()),
        given(piece.grade()),
        given(piece.size()),
        given(piece.form()),
        given(piece.set()),
        given(piece.suit()),
        home,
        piece.owner(),
        piece.ownerPolicy().id(),
        given(piece.condition()),
        given(piece.place()),
        piece.staysHome(),
        piece.care().stream().map(c -> CareBody.from(c, zone)).toList());
  }

  SavePiece.Request toRequest(String code) {
    return new SavePiece.Request(
        code,
        kind,
        colours,
        shade,
        grade,
        size,
        form,
        set,
        suit,
        home,
        owner,
        ownerPolicy,
        condition,
        place,
        staysHome,
        null);
  }

  static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
