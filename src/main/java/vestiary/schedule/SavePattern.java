package vestiary.schedule;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import vestiary.calendar.MassKind;
import vestiary.calendar.Term;
import vestiary.cluster.Church;
import vestiary.cluster.ReadCluster;
import vestiary.people.SavePerson;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;

/** Enters recurring Mass times and takes them off. */
@ApplicationScoped
@Transactional
public class SavePattern {

  private static final int SHORTEST = 5;
  private static final int LONGEST = 360;
  private static final int USUAL_MINUTES = 60;

  private final PatternRows patterns;
  private final MassRows masses;
  private final UnfoldPatterns unfold;
  private final ReadCluster cluster;
  private final SavePerson people;
  private final Clock clock;

  SavePattern(
      PatternRows patterns,
      MassRows masses,
      UnfoldPatterns unfold,
      ReadCluster cluster,
      SavePerson people,
      Clock clock) {
    this.patterns = patterns;
    this.masses = masses;
    this.unfold = unfold;
    this.cluster = cluster;
    this.people = people;
    this.clock = clock;
  }

  /**
   * A pattern as it was typed.
   *
   * @param church by short name
   * @param rrule as RFC 5545 writes it, daily or rarer
   * @param starts first date that counts, as in 2026-11-29
   * @param time local time, as in 10:30; kept when the clocks change
   * @param minutes 5 to 360
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
      String note) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill(new PatternRow(), request, asked);
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
    PatternRow row = new PatternRow();
    Asked asked = new Asked();
    fill(row, request, asked);
    asked.refuseIfFaulty();
    Optional<PatternRow> same = findSame(row);
    if (same.isPresent()) {
      return same.get().id.toString();
    }
    row.celebrantId = celebrant(request, asked);
    row.celebrantLost &= row.celebrantId == null;
    patterns.persist(row);
    unfold.unfold(row);
    patterns.flush();
    return row.id.toString();
  }

  /**
   * Enters the pattern, or changes the one with the same church, rule, first date and time; so a
   * list can be sent twice. A change reaches those of its Masses that are still to come and that
   * nobody touched.
   *
   * @throws Refused if a field is unfit
   */
  public void enterOrChange(Request request) {
    Asked asked = new Asked();
    PatternRow given = new PatternRow();
    fill(given, request, asked);
    asked.refuseIfFaulty();
    Optional<PatternRow> same = findSame(given);
    if (same.isEmpty()) {
      enter(request);
      return;
    }
    PatternRow row = same.get();
    fill(row, request, asked);
    row.celebrantId = celebrant(request, asked);
    row.celebrantLost &= row.celebrantId == null;
    masses
        .list("patternId = ?1 and not touched and starts >= ?2", row.id, clock.instant())
        .forEach(row::yieldTo);
  }

  /**
   * Takes a pattern off, with those of its Masses that are still to come and that nobody touched;
   * the others stay as if they had been entered by hand.
   *
   * @throws Refused if there is none of that id
   */
  public void remove(String id) {
    PatternRow row = patterns.findById(Asked.id("pattern", id));
    if (row == null) {
      throw new Refused(new Refusal.NotThere("pattern", id));
    }
    masses.delete("patternId = ?1 and not touched and starts >= ?2", row.id, clock.instant());
    masses.update("patternId = null, patternDate = null where patternId = ?1", row.id);
    patterns.delete(row);
  }

  private Optional<PatternRow> findSame(PatternRow row) {
    return patterns
        .find(
            "churchId = ?1 and rrule = ?2 and starts = ?3 and at = ?4",
            row.churchId,
            row.rrule,
            row.starts,
            row.at)
        .firstResultOptional();
  }

  private UUID celebrant(Request request, Asked asked) {
    String celebrant = asked.text("celebrant", request.celebrant());
    return celebrant.isEmpty() ? null : people.called(celebrant).id();
  }

  private void fill(PatternRow row, Request request, Asked asked) {
    row.starts = asked.date("starts", request.starts());
    row.rrule = rrule(request.rrule(), row.starts, asked);
    row.at = asked.time("time", request.time());
    row.minutes = asked.whole("minutes", request.minutes(), SHORTEST, LONGEST, USUAL_MINUTES);
    row.kind = asked.findTerm(MassKind.class, "mass", request.mass()).map(Term::id).orElse("");
    row.concelebrants =
        asked.whole("concelebrants", request.concelebrants(), 0, AskedMinisters.MOST, 0);
    row.deacons = asked.whole("deacons", request.deacons(), 0, AskedMinisters.MOST, 0);
    row.ministers = new AskedMinisters(asked).ministers(request.ministers());
    row.note = asked.text("note", request.note());
    String slug = asked.needed("church", request.church(), 40);
    Optional<Church> church = slug.isEmpty() ? Optional.empty() : cluster.findChurch(slug);
    if (church.isEmpty() && !slug.isEmpty()) {
      asked.fault("church", "church \"%s\" is no church of this cluster.".formatted(slug));
    }
    church.ifPresent(c -> row.churchId = c.id().value());
  }

  private static String rrule(String given, LocalDate starts, Asked asked) {
    String text = asked.needed("rrule", given, 400);
    if (text.isEmpty()) {
      return "";
    }
    try {
      Recurrence recurrence = Recurrence.parse(text);
      if (!asked.isFaulty() && !recurrence.hasDate(starts)) {
        asked.fault("rrule", "rrule \"%s\" names no day on or after %s.".formatted(text, starts));
      }
      return recurrence.toString();
    } catch (IllegalArgumentException e) {
      asked.fault("rrule", e.getMessage());
      return "";
    }
  }
}
