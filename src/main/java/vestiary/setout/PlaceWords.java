package vestiary.setout;

import static vestiary.web.Speech.say;

import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import vestiary.cluster.Church;
import vestiary.planning.SpanToCheck;
import vestiary.pool.CarriedPiece;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Window;
import vestiary.web.Speech;

/** Where a piece is found when it is set out: in the sacristy, or on the way from elsewhere. */
final class PlaceWords {

  private final SpanToCheck span;
  private final List<CarriedPiece> carried;

  PlaceWords(SpanToCheck span, List<CarriedPiece> carried) {
    this.span = span;
    this.carried = List.copyOf(carried);
  }

  /** For example "press, left" or "comes from Holy Trinity with Tarnwick, here by 13:39". */
  String of(PooledPiece piece, DatedMass mass, Window window) {
    ChurchId here = mass.church().id();
    Optional<CarriedPiece> arrival = findArrival(piece.code(), mass, window);
    if (arrival.isPresent()) {
      return comes(arrival.get());
    }
    ChurchId lies = span.lies(piece.toPiece(), window.setOut());
    if (!lies.equals(here)) {
      return say("lies at %s; no journey is planned", church(lies));
    }
    if (!piece.home().equals(here)) {
      return say("here, from %s", church(piece.home()));
    }
    return piece.place().isEmpty() ? say("in this sacristy") : piece.place();
  }

  /** The last journey that brings the piece here, if it arrives on the day of the Mass. */
  Optional<CarriedPiece> findArrival(String piece, DatedMass mass, Window window) {
    return carried.stream()
        .filter(one -> one.piece().equals(piece))
        .filter(one -> !one.arriveBy().isAfter(window.start()))
        .max(Comparator.comparing(CarriedPiece::arriveBy))
        .filter(one -> one.to().equals(mass.church().id()))
        .filter(one -> local(one.arriveBy()).toLocalDate().equals(mass.date()));
  }

  private String comes(CarriedPiece way) {
    return say(
        "comes from %s%s, here by %s",
        church(way.from()), with(way.carrier()), Speech.clock(local(way.arriveBy())));
  }

  private static String with(String carrier) {
    return carrier.isEmpty() ? "" : say(" with ") + carrier;
  }

  /** Where it goes after the Mass, if that is planned; else empty. */
  String back(String piece, Window window) {
    return carried.stream()
        .filter(one -> one.piece().equals(piece))
        .filter(one -> !one.leaveBy().isBefore(window.start()))
        .min(Comparator.comparing(CarriedPiece::leaveBy))
        .map(
            one ->
                say(
                    "%s%s, leave by %s",
                    church(one.to()), with(one.carrier()), moment(one.leaveBy())))
        .orElse("");
  }

  String church(ChurchId id) {
    return span.churches().stream()
        .filter(church -> church.id().equals(id))
        .map(Church::name)
        .findFirst()
        .orElse("elsewhere");
  }

  private String moment(Instant moment) {
    ZonedDateTime local = local(moment);
    return "%s, %s".formatted(Speech.weekday(local.toLocalDate()), Speech.clock(local));
  }

  private ZonedDateTime local(Instant moment) {
    return moment.atZone(span.cluster().zone());
  }
}
