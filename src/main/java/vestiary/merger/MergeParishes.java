package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import vestiary.cluster.Parishes;
import vestiary.cluster.ReadCluster;
import vestiary.pool.MoveGoods;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/**
 * Merges a parish into another: its churches belong to the other from then on, and so do its goods,
 * in the condition in which they are. What was lent before stays noted with its owner of that day.
 * The bishop's decree says what is done, and may say otherwise.
 *
 * <p>Source: Code of Canon Law, can. 121 (goods, rights and obligations of merged juridic persons
 * go to the one that comes of them, the will of founders and donors and acquired rights respected),
 * can. 515 §2 (the bishop alone merges parishes, having heard the council of priests). Where a
 * parish is divided, can. 122 has its goods shared by decree: give each piece its owner on its own
 * page.
 */
@ApplicationScoped
@Transactional
public class MergeParishes {

  private final Parishes parishes;
  private final MoveGoods goods;
  private final ReadCluster cluster;
  private final MergerRows mergers;
  private final Clock clock;

  MergeParishes(
      Parishes parishes, MoveGoods goods, ReadCluster cluster, MergerRows mergers, Clock clock) {
    this.parishes = parishes;
    this.goods = goods;
    this.cluster = cluster;
    this.mergers = mergers;
    this.clock = clock;
  }

  /**
   * Merges it.
   *
   * @param from id of the parish that is merged
   * @param into id of the other
   * @param since first date on which that holds, as in 2027-01-01, today or earlier
   * @param decree as it was typed; may be empty
   * @return how many pieces got another owner
   * @throws Refused if either is not there or merged already, both are one, or the day has not come
   */
  public int merge(String from, String into, String since, String decree) {
    Asked asked = new Asked();
    LocalDate date = asked.date("since", since);
    String note = asked.text("note", decree);
    if (!asked.isFaulty()
        && date.isAfter(LocalDate.now(clock.withZone(cluster.cluster().zone())))) {
      asked.fault("since", say("%s has not come yet; note the merger on that day.", date));
    }
    String one = asked.needed("from", from, 40);
    String other = asked.needed("into", into, 40);
    asked.refuseIfFaulty();
    Parishes.Parish ends = parishes.get(one);
    Parishes.Parish stays = parishes.get(other);
    if (ends.isMerged() || stays.isMerged() || ends.id().equals(stays.id())) {
      throw new Refused(
          new Refusal.AgainstRule(
              "into", say("Choose two parishes that both still stand. Nothing was changed.")));
    }
    parishes.merge(ends, stays, date);
    int moved = goods.owner(ends.name(), stays.name());
    MergerRow row = new MergerRow();
    row.kind = MergerRow.Kind.MERGING.id();
    row.parishId = ends.id();
    row.toId = stays.id();
    row.holdsFrom = date;
    row.pieces = moved;
    row.note = note;
    row.notedAt = clock.instant();
    mergers.persist(row);
    return moved;
  }
}
