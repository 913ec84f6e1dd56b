package vestiary.planning;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import vestiary.allocation.Hindrance;
import vestiary.allocation.LateArrival;
import vestiary.allocation.NotServing;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.web.Speech;

/** The span in which a clash stands, with the words that all parts of its page use. */
final class ClashScene {

  private final SpanToCheck span;
  private final Clash clash;
  private final ZoneId zone;
  private final Map<MassId, DatedMass> masses;
  private final Map<ChurchId, Church> churches;

  ClashScene(SpanToCheck span, Clash clash) {
    this.span = span;
    this.clash = clash;
    this.zone = span.cluster().zone();
    this.masses =
        span.masses().stream().collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.churches =
        span.churches().stream().collect(Collectors.toMap(Church::id, Function.identity()));
  }

  Clash clash() {
    return clash;
  }

  Locale locale() {
    return Speech.localeOr(span.cluster().language());
  }

  DatedMass mass(Need need) {
    return masses.get(need.mass());
  }

  Church church(ChurchId id) {
    return churches.get(id);
  }

  ShortageWords words(Shortage shortage) {
    return new ShortageWords(shortage, masses, zone);
  }

  ProofWords proofWords(Shortage shortage) {
    return new ProofWords(shortage, masses);
  }

  /** Whole minutes from one church to another; empty if no journey is known. */
  Optional<Duration> findJourney(ChurchId from, ChurchId to) {
    return span.journeys().find(from, to);
  }

  String road(LateArrival late) {
    if (late.arrives().equals(Instant.MAX)) {
      return say("No journey from %s to %s is entered.", church(late.from()), church(late.to()));
    }
    Duration journey = Duration.between(late.from().window().cleared(), late.arrives());
    return say(
        "From %s, cleared by %s, it is %d minutes to %s: there at %s, due at %s.",
        church(late.from()),
        clock(late.from().window().cleared()),
        journey.toMinutes(),
        church(late.to()),
        clock(late.arrives()),
        clock(late.due()));
  }

  String reason(NotServing not) {
    if (not.hindrance() == Hindrance.STAYS_HOME) {
      return say("stays at ") + home(not.piece());
    }
    if (not.hindrance() == Hindrance.NO_JOURNEY) {
      return say("at ") + home(not.piece()) + say(", from where no journey is entered");
    }
    if (not.hindrance() == Hindrance.KEPT_BACK) {
      return say("its owner does not give it for this Mass");
    }
    return not.away().stream().map(this::away).collect(Collectors.joining("; "));
  }

  private String away(Away away) {
    String reason = away.reason().isEmpty() ? say("away") : away.reason();
    if (away.until().equals(Instant.MAX)) {
      return reason + say(", until further notice");
    }
    LocalDate last = away.until().minusSeconds(1).atZone(zone).toLocalDate();
    return say("%s, to %s", reason, Speech.shortDate(last));
  }

  /** People know the set; a piece by itself goes by its own code. */
  static String name(Piece piece) {
    boolean setSpeaksForIt =
        piece.kind() == PieceKind.CHASUBLE || piece.kind() == PieceKind.DALMATIC;
    return setSpeaksForIt && !piece.set().isEmpty() ? piece.set() : piece.code();
  }

  String home(Piece piece) {
    return churches.get(piece.home()).name();
  }

  /** Where it would be carried from. */
  ChurchId lies(Piece piece) {
    return span.lies(piece, clash.first().start().toInstant());
  }

  String church(Need need) {
    return churches.get(need.church()).name();
  }

  String clock(Instant moment) {
    return Speech.clock(moment.atZone(zone));
  }

  /** Minutes on the clock since the midnight that began the first Mass's day. */
  int minutes(Instant moment) {
    ZonedDateTime time = moment.atZone(zone);
    int days = (int) (time.toLocalDate().toEpochDay() - clash.first().date().toEpochDay());
    return days * 24 * 60 + time.toLocalTime().toSecondOfDay() / 60;
  }
}
