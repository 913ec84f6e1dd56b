package vestiary.lending;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import vestiary.cluster.Church;
import vestiary.lending.ReadLendings.Lending;

/**
 * A lending as the API writes it for one of its sides; local times with offset, half-open.
 *
 * @param side {@code lender} or {@code borrower}: which of both the caller is
 * @param with word of the other cluster
 * @param church short name of the church where the pieces lie; told to the borrower
 */
record LendingBody(
    String id,
    String side,
    String with,
    String from,
    String to,
    String state,
    boolean overdue,
    List<PieceBody> pieces,
    String note,
    String answer,
    String ending,
    String church) {

  /** A piece as it was when it was offered. */
  record PieceBody(
      String code, String kind, List<String> colours, String set, String owner, String condition) {}

  static LendingBody from(Lending one) {
    return new LendingBody(
        one.id().toString(),
        one.ours() ? "lender" : "borrower",
        one.other().word(),
        local(one.from(), one.zone()),
        local(one.until(), one.zone()),
        one.state().id(),
        one.overdue(),
        one.pieces().stream()
            .map(
                p ->
                    new PieceBody(
                        p.code(), p.kind(), p.colours(), p.set(), p.owner(), p.condition()))
            .toList(),
        one.note(),
        one.answer(),
        one.ending(),
        one.church().stream().map(Church::slug).findFirst().orElse(null));
  }

  private static String local(Instant moment, ZoneId zone) {
    return moment.atZone(zone).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }
}
