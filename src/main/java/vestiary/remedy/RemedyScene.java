package vestiary.remedy;

import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** The span in which a shortage is mended, with what all words about it need. */
final class RemedyScene {

  private final SpanToCheck span;
  private final Shortage shortage;
  private final Map<MassId, DatedMass> masses;
  private final Map<ChurchId, Church> churches;
  private final Map<String, PooledPiece> pieces;

  RemedyScene(SpanToCheck span, Shortage shortage) {
    this.span = span;
    this.shortage = shortage;
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
    this.pieces =
        span.pieces().stream().collect(Collectors.toMap(PooledPiece::code, Function.identity()));
  }

  Shortage shortage() {
    return shortage;
  }

  Locale language() {
    return Speech.localeOr(span.cluster().language());
  }

  DatedMass mass(MassId id) {
    return masses.get(id);
  }

  /** {@code null} for a piece that is not in the pool yet. */
  PooledPiece piece(String code) {
    return pieces.get(code);
  }

  String church(ChurchId id) {
    return churches.get(id).name();
  }

  String slug(ChurchId id) {
    return churches.get(id).slug();
  }

  String clock(Instant moment) {
    return Speech.clock(moment.atZone(span.cluster().zone()));
  }

  LocalDate date(Instant moment) {
    return moment.atZone(span.cluster().zone()).toLocalDate();
  }

  /** As the API writes it. */
  String local(Instant moment) {
    return moment.atZone(span.cluster().zone()).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
