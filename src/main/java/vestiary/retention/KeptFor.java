package vestiary.retention;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.EnumMap;
import java.util.Map;
import vestiary.access.CurrentCluster;
import vestiary.problem.Asked;
import vestiary.problem.Refused;

/** How long the present cluster keeps what. */
@ApplicationScoped
class KeptFor {

  private final RetentionRows rows;
  private final CurrentCluster current;
  private final Clock clock;

  KeptFor(RetentionRows rows, CurrentCluster current, Clock clock) {
    this.rows = rows;
    this.current = current;
    this.clock = clock;
  }

  /** In days, for each. */
  @Transactional
  Map<Keeping, Integer> days() {
    RetentionRow row = row();
    Map<Keeping, Integer> days = new EnumMap<>(Keeping.class);
    for (Keeping keeping : Keeping.values()) {
      days.put(keeping, row.days(keeping));
    }
    return days;
  }

  /** What is older goes. */
  @Transactional
  Instant since(Keeping keeping) {
    return clock.instant().minus(row().days(keeping), ChronoUnit.DAYS);
  }

  /**
   * Changes it; what goes by that goes with the next night.
   *
   * @param typed days as they were typed; one that is left out stays as it was
   * @throws Refused if one is no number, or too small or large
   */
  @Transactional
  void change(Map<Keeping, String> typed) {
    RetentionRow row = row();
    Asked asked = new Asked();
    for (Keeping keeping : Keeping.values()) {
      String field = keeping.field();
      Integer given = asked.number(field, typed.getOrDefault(keeping, ""));
      row.keep(
          keeping, asked.whole(field, given, keeping.least(), keeping.most(), row.days(keeping)));
    }
    asked.refuseIfFaulty();
    rows.persist(row);
  }

  private RetentionRow row() {
    return rows.findByIdOptional(current.id())
        .orElseGet(
            () -> {
              RetentionRow usual = new RetentionRow();
              usual.id = current.id();
              return usual;
            });
  }
}
