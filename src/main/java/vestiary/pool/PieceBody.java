package vestiary.pool;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
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
    @Schema(readOnly = true) List<CareBody> care,
    String description,
    String provenance,
    String acquired,
    Boolean precious,
    String keeper,
    @Schema(readOnly = true) WithdrawnBody withdrawn) {

  /** That it is out of use for good. */
  record WithdrawnBody(String on, String reason, String to) {
    static WithdrawnBody from(Withdrawn withdrawn) {
      return new WithdrawnBody(
          withdrawn.on().toString(), withdrawn.reason(), given(withdrawn.to()));
    }
  }

  /**
   * Care as the API writes it: local times with offset, half-open; no end means until further
   * notice. With a kind it is away until somebody says that it is back.
   *
   * @param late whether it should have been back and nobody has said that it is
   */
  record CareBody(
      @Schema(readOnly = true) String id,
      String kind,
      String from,
      String to,
      String reason,
      @Schema(readOnly = true) Boolean late) {
    static CareBody from(Care care, ZoneId zone) {
      return new CareBody(
          care.id().toString(),
          care.kind().id(),
          local(care.from(), zone),
          care.findEnd().map(e -> local(e, zone)).orElse(null),
          care.reason(),
          care.findMissed().isPresent());
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
        piece.care().stream().map(c -> CareBody.from(c, zone)).toList(),
        given(piece.particulars().description()),
        given(piece.particulars().provenance()),
        given(piece.particulars().acquired()),
        piece.particulars().precious(),
        given(piece.particulars().keeper()),
        piece.withdrawn().stream().map(WithdrawnBody::from).findFirst().orElse(null));
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
        particulars(),
        null);
  }

  /** Whoever knows nothing of these leaves them as they are. */
  private Particulars particulars() {
    boolean silent =
        Stream.of(description, provenance, acquired, precious, keeper).allMatch(Objects::isNull);
    return silent
        ? null
        : new Particulars(description, provenance, acquired, Boolean.TRUE.equals(precious), keeper);
  }

  static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
