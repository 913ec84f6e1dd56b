package vestiary.sending;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * One piece that went out, as the API writes it: local times with offset; what was not said is
 * absent.
 *
 * @param id of the sending, shared by all that went with it
 * @param item code of the set or piece that was sent
 * @param loan whether it went to another than its owner
 * @param church short name of the church it went to; absent outside the cluster
 * @param whom who has it outside the cluster
 * @param overdueDays days on the calendar since it was due; absent unless it is overdue
 * @param sentBy who noted it
 * @param signer who signed for it there
 */
record LoanBody(
    String id,
    String item,
    String piece,
    String what,
    String owner,
    String borrower,
    boolean loan,
    String church,
    String whom,
    String mass,
    String out,
    String due,
    Integer overdueDays,
    String carrier,
    String signer,
    String sentBy,
    String conditionOut,
    String back,
    String backAt,
    String taker,
    String conditionBack) {

  static LoanBody of(Sent one, SendingWords.Said said, Instant now) {
    Optional<Sent.Return> back = one.findReturn();
    return new LoanBody(
        one.sending().toString(),
        one.item(),
        one.code(),
        one.what(),
        one.owner(),
        one.borrower(),
        one.loan(),
        one.churches().stream().findFirst().map(said::slug).orElse(null),
        given(one.whom()),
        one.masses().stream().findFirst().map(id -> id.value().toString()).orElse(null),
        local(one.went(), said),
        local(one.due(), said),
        one.isOverdue(now) ? one.daysOverdue(now, said.zone()) : null,
        names(one.carriers(), said),
        names(one.signers(), said),
        given(said.marked(one.sentBy())),
        given(one.condition()),
        back.map(r -> local(r.at(), said)).orElse(null),
        back.map(r -> said.slug(r.church())).orElse(null),
        back.map(r -> names(r.takers(), said)).orElse(null),
        back.map(r -> given(r.condition())).orElse(null));
  }

  private static String names(List<UUID> ids, SendingWords.Said said) {
    return ids.stream().findFirst().map(said::person).orElse(null);
  }

  static String local(Instant moment, SendingWords.Said said) {
    return said.local(moment).format(DateTimeFormatter.ISO_OFFSET_DATE_TIME);
  }

  static String given(String text) {
    return text.isEmpty() ? null : text;
  }
}
