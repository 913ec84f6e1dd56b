package vestiary.plan;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Situation;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.web.Speech;

/** Names churches, pieces, Masses and hours when a change is told. */
final class SinceWords {

  /**
   * One change.
   *
   * @param breaks whether the plan that holds cannot stand with it
   */
  record Told(String sentence, boolean breaks) {}

  private final Map<ChurchId, String> churches;
  private final Map<String, Piece> pieces;
  private final ZoneId zone;

  SinceWords(SpanToCheck span, Situation now) {
    this.churches = span.churches().stream().collect(Collectors.toMap(Church::id, Church::name));
    this.pieces = byCode(now);
    this.zone = span.cluster().zone();
  }

  static Map<String, Piece> byCode(Situation situation) {
    return situation.span().pieces().stream()
        .collect(Collectors.toMap(Piece::code, Function.identity()));
  }

  String church(ChurchId id) {
    return churches.getOrDefault(id, say("a church that is gone"));
  }

  /** The set it belongs to, or its own code. */
  String name(String code) {
    return Optional.ofNullable(pieces.get(code)).map(SinceWords::name).orElse(code);
  }

  static String name(Piece piece) {
    return piece.set().isEmpty() ? piece.code() : piece.set();
  }

  /** For example "Mass at Saint Anne on Tuesday 8 December, 18:30". */
  String about(Need need) {
    return say("Mass at %s on %s", church(need.church()), moment(need.window().start()));
  }

  String moment(Instant moment) {
    ZonedDateTime time = moment.atZone(zone);
    return Speech.day(time.toLocalDate()) + ", " + Speech.clock(time);
  }

  /** The hour alone if it is that of another moment's day. */
  String after(Instant before, Instant moment) {
    ZonedDateTime time = moment.atZone(zone);
    return before.atZone(zone).toLocalDate().equals(time.toLocalDate())
        ? Speech.clock(time)
        : moment(moment);
  }
}
