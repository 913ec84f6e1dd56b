package vestiary.cluster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import vestiary.access.CurrentCluster;
import vestiary.calendar.CalendarSettings;
import vestiary.proper.ChurchesToBind;
import vestiary.proper.TitledChurch;

/** Answers what propers are held against. */
@ApplicationScoped
@Transactional
class BoundChurches implements ChurchesToBind {

  private final CurrentCluster current;
  private final ClusterRows clusters;
  private final ChurchRows churches;
  private final OneByOne turns;

  BoundChurches(CurrentCluster current, ClusterRows clusters, ChurchRows churches, OneByOne turns) {
    this.current = current;
    this.clusters = clusters;
    this.churches = churches;
    this.turns = turns;
  }

  @Override
  public CalendarSettings settings() {
    return clusters.findById(current.id()).toCalendar();
  }

  @Override
  public List<TitledChurch> titled() {
    return churches.inOrder().stream().map(ChurchRow::toTitled).toList();
  }

  @Override
  public ZoneId zone() {
    return ZoneId.of(clusters.findById(current.id()).timeZone);
  }

  @Override
  public Locale language() {
    return Locale.forLanguageTag(clusters.findById(current.id()).languages[0]);
  }

  @Override
  @Transactional(Transactional.TxType.MANDATORY)
  public void waitForTurn() {
    turns.waitForTurn();
  }
}
