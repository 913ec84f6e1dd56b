package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;

/** Enters recurring Mass times. */
@ApplicationScoped
@Transactional
public class SavePattern {

  private final PatternRows patterns;
  private final UnfoldPatterns unfold;
  private final FillPattern fill;
  private final ChangePattern change;
  private final SavePerson people;

  SavePattern(
      PatternRows patterns,
      UnfoldPatterns unfold,
      FillPattern fill,
      ChangePattern change,
      SavePerson people) {
    this.patterns = patterns;
    this.unfold = unfold;
    this.fill = fill;
    this.change = change;
    this.people = people;
  }

  /**
   * A pattern as it was typed.
   *
   * @param church by short name
   * @param rrule as RFC 5545 writes it, daily or rarer; empty where the bounds name days
   * @param starts first date that counts, as in 2026-11-29
   * @param time local time, as in 10:30; kept when the clocks change
   * @param minutes 5 to 360
   * @param language BCP 47, one of the cluster's; the first of them
   */
  public record Request(
      String church,
      String rrule,
      String starts,
      String time,
      Integer minutes,
      String mass,
      String celebrant,
      Integer concelebrants,
      Integer deacons,
      List<MinistersValue> ministers,
      String note,
      String language,
      Bounds bounds) {}

  /**
   * What bounds a pattern; {@code null} or blank is no bound.
   *
   * @param days of the calendar, in place of a rule: holy-days, holy-day-eves,
   *     sundays-and-holy-days, solemnities, ash-wednesday, all-souls
   * @param until last date, included
   * @param seasons those alone
   * @param months those alone, 1 to 12
   * @param school always, in-term or in-holidays
   * @param except dates left out
   */
  public record Bounds(
      String days,
      String until,
      List<String> seasons,
      List<Integer> months,
      Boolean notInTriduum,
      Boolean notOnHolyDays,
      String school,
      List<String> except) {

    public static final Bounds NONE = new Bounds("", "", null, null, null, null, "", null);
  }

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill.fill(new PatternRow(), request, asked);
    return asked.faults();
  }

  /**
   * Enters a pattern and its Masses as far as the others reach; the same pattern sent twice is kept
   * once.
   *
   * @return its id
   * @throws Refused if a field is unfit
   */
  public String enter(Request request) {
    PatternRow row = filled(request);
    Optional<PatternRow> same = findSame(row);
    if (same.isPresent()) {
      return same.get().id.toString();
    }
    String celebrant = new Asked().text("celebrant", request.celebrant());
    row.celebrantId = celebrant.isEmpty() ? null : people.called(celebrant).id();
    patterns.persist(row);
    unfold.unfold(row);
    patterns.flush();
    return row.id.toString();
  }

  /**
   * Enters the pattern, or changes the one with the same church, days, first date and time; so a
   * list can be sent twice. A change reaches those of its Masses that are still to come and that
   * nobody touched.
   *
   * @throws Refused if a field is unfit
   */
  public void enterOrChange(Request request) {
    Optional<UUID> same = findSame(filled(request)).map(row -> row.id);
    if (same.isEmpty()) {
      enter(request);
    } else {
      change.change(same.get().toString(), ChangePattern.Change.now(request));
    }
  }

  /**
   * Has a pattern yield its Masses after that date once more, as far as the others reach; those
   * that it had yielded there are gone already.
   */
  public void yieldAgain(UUID pattern, LocalDate after) {
    patterns.findByIdOptional(pattern).ifPresent(row -> unfold.unfold(row, after));
  }

  private PatternRow filled(Request request) {
    Asked asked = new Asked();
    PatternRow row = new PatternRow();
    fill.fill(row, request, asked);
    asked.refuseIfFaulty();
    return row;
  }

  private Optional<PatternRow> findSame(PatternRow row) {
    return patterns
        .find(
            "churchId = ?1 and rrule = ?2 and days = ?3 and starts = ?4 and at = ?5",
            row.churchId,
            row.rrule,
            row.days,
            row.starts,
            row.at)
        .firstResultOptional();
  }
}
