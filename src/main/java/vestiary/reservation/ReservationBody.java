package vestiary.reservation;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * A reservation as the API writes it; times are local with offset, half-open. To make one, a set or
 * a piece and the Mass are enough.
 *
 * @param pieces codes of those that are kept by it
 * @param lost codes of those that care or a remedy has taken from it; left out while there is none
 */
record ReservationBody(
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String id,
    String set,
    String piece,
    String mass,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String church,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) List<String> pieces,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) List<String> lost,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String from,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String to,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String state,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String by,
    @JsonProperty(access = JsonProperty.Access.READ_ONLY) String madeAt) {

  static ReservationBody from(Reservation one) {
    ZoneId zone = one.mass().start().getZone();
    return new ReservationBody(
        one.id().toString(),
        one.isSet() ? one.code() : null,
        one.isSet() ? null : one.code(),
        one.mass().id().value().toString(),
        one.mass().church().slug(),
        one.pieces(),
        one.lost().isEmpty() ? null : one.lost(),
        local(one.from(), zone),
        one.until().equals(Instant.MAX) ? null : local(one.until(), zone),
        one.state().id(),
        one.by(),
        local(one.madeAt(), zone));
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
