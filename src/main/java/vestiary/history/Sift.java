package vestiary.history;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import vestiary.problem.Asked;

/**
 * Which changes are looked for.
 *
 * @param concern id of the one thing, person or church that they are about; empty for all
 * @param who mark of a visitor or id of a shared device; {@link #ANYBODY} or {@link #JOBS} besides
 * @param from the first moment, included
 * @param to the last, not included
 */
record Sift(String concern, String who, Instant from, Instant to) {

  static final String ANYBODY = "";

  /** What the server does by itself, for which it keeps no mark. */
  static final String JOBS = "jobs";

  private static final Instant EVER = Instant.parse("9999-01-01T00:00:00Z");

  /** The whole history of one thing. */
  static Sift about(String concern) {
    return new Sift(concern, ANYBODY, Instant.EPOCH, EVER);
  }

  /**
   * Narrowed to a time and a maker.
   *
   * @param from first date in the zone, ISO 8601; empty for no bound
   * @param to last date, included; likewise
   * @throws vestiary.problem.Refused if one is no date
   */
  Sift narrowed(String who, String from, String to, ZoneId zone) {
    Asked asked = new Asked();
    Instant first = asked.findDate("from", from).map(d -> start(d, zone)).orElse(Instant.EPOCH);
    Instant end = asked.findDate("to", to).map(d -> start(d.plusDays(1), zone)).orElse(EVER);
    asked.refuseIfFaulty();
    return new Sift(concern, who.strip(), first, end);
  }

  boolean isByAnybody() {
    return who.equals(ANYBODY);
  }

  /** As the database has it. */
  String mark() {
    return who.equals(JOBS) ? "" : who;
  }

  private static Instant start(LocalDate date, ZoneId zone) {
    return date.atStartOfDay(zone).toInstant();
  }
}
