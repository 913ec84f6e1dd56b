package vestiary.merger;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import vestiary.cluster.Church;
import vestiary.cluster.Closings;
import vestiary.cluster.ReadCluster;
import vestiary.pool.MoveGoods;
import vestiary.problem.Asked;
import vestiary.problem.Refused;
import vestiary.schedule.EndMassTimes;

/**
 * Closes a church: its regular Masses end with the day before, its pieces go home to another
 * church, and all that was celebrated there stays. Whether it may close, and what becomes of its
 * altar and its furnishings, is for the bishop's decree to say.
 *
 * <p>Source: Code of Canon Law, can. 1222 (a church given over to profane use), can. 1238 §2
 * (altars do not lose their dedication by that).
 */
@ApplicationScoped
@Transactional
public class CloseChurch {

  private final Closings closings;
  private final EndMassTimes times;
  private final MoveGoods goods;
  private final ReadCluster cluster;
  private final MergerRows mergers;
  private final Clock clock;

  CloseChurch(
      Closings closings,
      EndMassTimes times,
      MoveGoods goods,
      ReadCluster cluster,
      MergerRows mergers,
      Clock clock) {
    this.closings = closings;
    this.times = times;
    this.goods = goods;
    this.cluster = cluster;
    this.mergers = mergers;
    this.clock = clock;
  }

  /**
   * Closes it.
   *
   * @param from first date without Mass, as in 2027-01-01, today or later
   * @param decree as it was typed; may be empty
   * @throws Refused if there is no such church, a field is unfit, or the date is past
   */
  public void close(String slug, String from, String decree) {
    Church church = cluster.getChurch(slug);
    Asked asked = new Asked();
    LocalDate date = asked.date("from", from);
    String note = asked.text("note", decree);
    if (!asked.isFaulty() && date.isBefore(today())) {
      asked.fault("from", say("%s is past; Masses that were said stay said.", date));
    }
    asked.refuseIfFaulty();
    times.end(church.id(), date);
    closings.close(slug, date);
    note(MergerRow.Kind.CLOSING, church.id().value(), null, date, 0, note);
  }

  /** Opens it again; its Mass times are to be entered anew. */
  public void open(String slug) {
    Church church = cluster.getChurch(slug);
    closings.open(slug);
    note(MergerRow.Kind.OPENING, church.id().value(), null, today(), 0, "");
  }

  /**
   * Gives all pieces that are at home there a home in another church, at once.
   *
   * @return how many
   * @throws Refused if there is no such church, or both are one
   */
  public int sendHome(String slug, String to) {
    Church church = cluster.getChurch(slug);
    Asked asked = new Asked();
    Optional<Church> other = cluster.findChurch(asked.needed("to", to, 40));
    if (!asked.isFaulty() && (other.isEmpty() || other.get().id().equals(church.id()))) {
      asked.fault("to", say("Choose another church of this cluster."));
    }
    asked.refuseIfFaulty();
    UUID home = other.orElseThrow().id().value();
    int moved = goods.home(church.id(), other.orElseThrow().id());
    note(MergerRow.Kind.GOODS, church.id().value(), home, today(), moved, "");
    return moved;
  }

  private void note(
      MergerRow.Kind kind, UUID church, UUID to, LocalDate from, int pieces, String decree) {
    MergerRow row = new MergerRow();
    row.kind = kind.id();
    row.churchId = church;
    row.toId = to;
    row.holdsFrom = from;
    row.pieces = pieces;
    row.note = decree;
    row.notedAt = clock.instant();
    mergers.persist(row);
  }

  private LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }
}
