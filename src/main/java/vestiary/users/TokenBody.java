package vestiary.users;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;

/**
 * A token of one's own as the API writes one; moments are local with offset.
 *
 * @param changes whether it may also change what its user may change
 * @param usedAt to ten minutes; absent if it never was
 * @param token itself, when it was just made; absent otherwise
 */
record TokenBody(
    String id,
    String name,
    boolean changes,
    String madeAt,
    String endsAt,
    String usedAt,
    String token) {

  static TokenBody from(TokenRow row, ZoneId zone) {
    return new TokenBody(
        row.id.toString(),
        row.name,
        !row.looksOnly,
        text(row.madeAt, zone),
        text(row.endsAt, zone),
        row.usedAt == null ? null : text(row.usedAt, zone),
        null);
  }

  TokenBody with(String made) {
    return new TokenBody(id, name, changes, madeAt, endsAt, usedAt, made);
  }

  private static String text(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }

  /**
   * What is sent to have one made.
   *
   * @param days how long it is good; absent for 90
   * @param changes whether it may also change something; absent for no
   */
  record Entry(String name, Integer days, Boolean changes) {
    Tokens.Request toRequest() {
      return new Tokens.Request(
          name, days == null ? "" : days.toString(), !Boolean.TRUE.equals(changes));
    }
  }
}
