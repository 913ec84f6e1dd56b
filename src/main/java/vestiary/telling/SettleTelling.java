package vestiary.telling;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.DayOfWeek;
import java.time.LocalTime;
import vestiary.problem.Asked;

/** When letters of the week leave, and what else a cluster settles of telling people. */
@ApplicationScoped
@Transactional
public class SettleTelling {

  private static final int MOST_OFFICE_DAYS = 90;

  private final TellingRows rows;

  SettleTelling(TellingRows rows) {
    this.rows = rows;
  }

  /** As it is chosen, or the usual. */
  public Telling read() {
    return rows.findAll().firstResultOptional().map(TellingRow::toTelling).orElse(Telling.USUAL);
  }

  /** As it was typed. */
  record Request(String weekday, String hour, String officeDays, boolean namesPublic) {}

  /**
   * Chooses.
   *
   * @throws vestiary.problem.Refused if a field is unfit
   */
  void settle(Request request) {
    Asked asked = new Asked();
    int weekday =
        asked.whole(
            "weekday",
            asked.number("weekday", request.weekday()),
            1,
            7,
            DayOfWeek.FRIDAY.getValue());
    int days =
        asked.whole(
            "officeDays",
            asked.number("officeDays", request.officeDays()),
            1,
            MOST_OFFICE_DAYS,
            Telling.USUAL.officeDays());
    LocalTime hour =
        request.hour().isBlank() ? Telling.USUAL.hour() : asked.time("hour", request.hour());
    asked.refuseIfFaulty();
    TellingRow row = rows.findAll().firstResultOptional().orElseGet(TellingRow::new);
    row.weekday = weekday;
    row.hour = hour;
    row.officeDays = days;
    row.namesPublic = request.namesPublic();
    rows.persistAndFlush(row);
  }
}
