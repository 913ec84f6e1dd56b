package vestiary.inventory;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.cluster.ReadCluster;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Notes that an inventory was made on paper, or in another list, before this one was kept. */
@ApplicationScoped
@Transactional
public class NoteInventory {

  private final StocktakeRows stocktakes;
  private final ReadCluster cluster;
  private final CurrentVisitor visitor;
  private final Clock clock;

  NoteInventory(
      StocktakeRows stocktakes, ReadCluster cluster, CurrentVisitor visitor, Clock clock) {
    this.stocktakes = stocktakes;
    this.cluster = cluster;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Notes it; the same again changes nothing.
   *
   * @param church its short name
   * @throws Refused if there is no such church, or the day is to come
   */
  public void heldElsewhere(String church, LocalDate date) {
    UUID id = cluster.getChurch(church).id().value();
    visitor.refuseOutsideOwn(Action.KEEP_VESTMENTS, id);
    Optional<FieldFault> fault = findFault("date", date);
    if (fault.isPresent()) {
      throw new Refused(new Refusal.Unfit(List.of(fault.get())));
    }
    if (stocktakes.count("churchId = ?1 and elsewhere and heldOn = ?2", id, date) > 0) {
      return;
    }
    StocktakeRow row = new StocktakeRow();
    row.churchId = id;
    row.begunAt = clock.instant();
    row.begunBy = visitor.visitor().mark();
    row.heldOn = date;
    row.closedAt = row.begunAt;
    row.closedBy = row.begunBy;
    row.elsewhere = true;
    stocktakes.persistAndFlush(row);
  }

  /** What is wrong with such a date; empty if it can be noted. */
  public Optional<FieldFault> findFault(String field, LocalDate date) {
    LocalDate today = LocalDate.now(clock.withZone(cluster.cluster().zone()));
    return date.isAfter(today)
        ? Optional.of(
            new FieldFault(field, say("An inventory cannot have been made on a day to come.")))
        : Optional.empty();
  }
}
