package vestiary.office;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.cluster.ReadCluster;
import vestiary.planning.DayNotices;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.telling.SettleTelling;
import vestiary.web.Link;

/** Which sheets the bishop's office waits for. */
@ApplicationScoped
@Transactional
public class ReadDueSheets implements DayNotices {

  private final ReadMasses masses;
  private final OfficeSheetRows rows;
  private final SettleTelling settings;
  private final ReadCluster cluster;
  private final Clock clock;

  ReadDueSheets(
      ReadMasses masses,
      OfficeSheetRows rows,
      SettleTelling settings,
      ReadCluster cluster,
      Clock clock) {
    this.masses = masses;
    this.rows = rows;
    this.settings = settings;
    this.cluster = cluster;
    this.clock = clock;
  }

  /** By the cluster's clock. */
  public LocalDate today() {
    return LocalDate.now(clock.withZone(cluster.cluster().zone()));
  }

  /** Those of Masses that begin on these dates, both included, by start. */
  public List<DueSheet> between(LocalDate first, LocalDate last) {
    return ofWanted(masses.between(first, last).stream()).toList();
  }

  /**
   * Those that are not sent and should be before the end of a week: of its own Masses and of later
   * ones.
   *
   * @param monday first day of the week
   */
  public List<DueSheet> pressingIn(LocalDate monday) {
    LocalDate sunday = monday.plusDays(6);
    return between(monday, sunday.plusDays(settings.read().officeDays())).stream()
        .filter(one -> one.sent().isEmpty() && !one.due().isAfter(sunday))
        .toList();
  }

  /** That of one Mass, whoever presides. */
  DueSheet of(DatedMass mass) {
    return due(mass, rows.of(List.of(mass.id().value())), settings.read().officeDays());
  }

  @Override
  public List<Notice> of(List<DatedMass> day) {
    LocalDate today = today();
    return ofWanted(day.stream())
        .map(
            one ->
                new Notice(
                    one.isPressing(today),
                    one.about() + ".",
                    one.sentence(today),
                    new Link(say("The sheet"), one.address())))
        .toList();
  }

  private Stream<DueSheet> ofWanted(Stream<DatedMass> found) {
    List<DatedMass> wanted = found.filter(DueSheet::isWanted).toList();
    Map<UUID, OfficeSheetRow> kept =
        rows.of(wanted.stream().map(mass -> mass.id().value()).toList());
    int days = wanted.isEmpty() ? 0 : settings.read().officeDays();
    return wanted.stream().map(mass -> due(mass, kept, days));
  }

  private static DueSheet due(DatedMass mass, Map<UUID, OfficeSheetRow> kept, int days) {
    OfficeSheetRow row = kept.get(mass.id().value());
    return new DueSheet(
        mass,
        mass.date().minusDays(days),
        row == null || row.sentOn == null ? List.of() : List.of(row.sentOn));
  }
}
