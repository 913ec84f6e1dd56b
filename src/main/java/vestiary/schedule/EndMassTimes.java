package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import vestiary.cluster.ReadCluster;
import vestiary.vesting.ChurchId;

/** Ends every regular Mass time of a church that closes. */
@ApplicationScoped
@Transactional
public class EndMassTimes {

  private final PatternRows patterns;
  private final MassRows masses;
  private final ChangePattern change;
  private final EffectsSheet sheet;
  private final ReadCluster cluster;

  EndMassTimes(
      PatternRows patterns,
      MassRows masses,
      ChangePattern change,
      EffectsSheet sheet,
      ReadCluster cluster) {
    this.patterns = patterns;
    this.masses = masses;
    this.change = change;
    this.sheet = sheet;
    this.cluster = cluster;
  }

  /**
   * What ending them does.
   *
   * @param times how many Mass times end
   * @param lead how many Masses that touches
   * @param touched which vestments, holds and ministers; empty if none are
   * @param byHand how many Masses stay since somebody entered or changed them by hand
   */
  public record Ending(int times, String lead, List<String> touched, int byHand) {
    public Ending {
      touched = List.copyOf(touched);
    }
  }

  /** What it would do. Nothing is changed. */
  public Ending look(ChurchId church, LocalDate from) {
    List<PatternRow> rows = lasting(church, from);
    List<Effect> effects = new ArrayList<>();
    rows.forEach(row -> effects.addAll(change.lookAtEnd(row, from)));
    effects.sort(Comparator.comparing(Effect::date));
    return new Ending(
        rows.size(),
        EffectsSheet.lead(effects),
        sheet.touched(effects),
        (int)
            masses.count(
                "churchId = ?1 and touched and not cancelled and starts >= ?2",
                church.value(),
                from.atStartOfDay(cluster.cluster().zone()).toInstant()));
  }

  /** Ends them with the day before; what begins later is taken off. */
  public void end(ChurchId church, LocalDate from) {
    lasting(church, from).forEach(row -> change.end(row, from));
  }

  private List<PatternRow> lasting(ChurchId church, LocalDate from) {
    return patterns.list(
        "churchId = ?1 and (ends is null or ends >= ?2) order by at, id", church.value(), from);
  }
}
