package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.plan.ReadMovements;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;

/** Keeps what the sacristans of each church know of the week, and works out what it is now. */
@ApplicationScoped
@Transactional(Transactional.TxType.MANDATORY)
class KeepToldSacristies {

  private final SacristyToldRows told;
  private final CheckClashes check;
  private final ReadMovements movements;

  KeepToldSacristies(SacristyToldRows told, CheckClashes check, ReadMovements movements) {
    this.told = told;
    this.check = check;
    this.movements = movements;
  }

  /**
   * The days from one on which letters of the week left.
   *
   * @param churches what they ask of each church, by its id
   */
  record Seen(LocalDate day, WeekSeen week, Map<UUID, ChurchWeek> churches) {}

  /** As it is now. */
  Seen see(LocalDate day) {
    LocalDate last = day.plusDays(WriteWeekLetters.DAYS);
    WeekSeen week = new WeekSeen(check.load(day, last), movements.between(day, last).trips());
    List<Clash> clashes = check.in(week.span());
    return new Seen(
        day,
        week,
        week.span().churches().stream()
            .collect(
                Collectors.toMap(
                    church -> church.id().value(),
                    church -> ChurchWeek.of(week, clashes, church))));
  }

  /** The day of the letters of the week of which sacristans know; empty before the first. */
  Optional<LocalDate> findDay() {
    return told.findAll().firstResultOptional().map(row -> row.day);
  }

  /** What they know, by the church's id. */
  Map<UUID, ChurchWeek> read() {
    return told.listAll().stream().collect(Collectors.toMap(row -> row.id, row -> row.week));
  }

  /** From now on they know this. */
  void keep(Seen seen) {
    seen.churches().forEach((church, week) -> keep(church, seen.day(), week));
  }

  private void keep(UUID church, LocalDate day, ChurchWeek week) {
    SacristyToldRow row =
        told.findByIdOptional(church)
            .orElseGet(
                () -> {
                  SacristyToldRow fresh = new SacristyToldRow();
                  fresh.id = church;
                  fresh.day = day;
                  fresh.week = week;
                  told.persist(fresh);
                  return fresh;
                });
    row.day = day;
    row.week = week;
  }
}
