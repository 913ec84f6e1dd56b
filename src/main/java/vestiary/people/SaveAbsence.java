package vestiary.people;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import vestiary.cluster.ReadCluster;
import vestiary.problem.Asked;
import vestiary.problem.FieldFault;
import vestiary.problem.Refused;
import vestiary.problem.TypedMoment;

/**
 * Keeps when people are away. That the last who could celebrate goes is no reason to refuse it: he
 * is away all the same, and the Masses say what that comes to. Whoever asks for it must be the
 * person, or one who keeps people, which is for pages and resources to see to.
 */
@ApplicationScoped
@Transactional
public class SaveAbsence {

  private static final int LONGEST_REASON = 300;

  private final AbsenceRows absences;
  private final PersonRows people;
  private final ReadCluster cluster;
  private final Clock clock;

  SaveAbsence(AbsenceRows absences, PersonRows people, ReadCluster cluster, Clock clock) {
    this.absences = absences;
    this.people = people;
    this.cluster = cluster;
    this.clock = clock;
  }

  /**
   * An absence as it was typed.
   *
   * @param from first date, or a date and time, by the cluster's clock; not given: from now on
   * @param to last date, or the date and time at which the person is back; not given: until further
   *     notice
   * @param reason in words; need not be said
   */
  public record Request(String from, String to, String reason) {}

  /** What is wrong with a request; empty if it can be kept. Nothing is changed. */
  public List<FieldFault> findFaults(Request request) {
    Asked asked = new Asked();
    fill(new AbsenceRow(), request, asked);
    return asked.faults();
  }

  /**
   * Enters it; one of the same time is changed, so that a list can be sent again.
   *
   * @throws Refused if there is nobody of that short name, or a field is unfit
   */
  public Absence enter(String slug, Request request) {
    PersonRow person = people.getBySlug(slug);
    AbsenceRow given = new AbsenceRow();
    Asked asked = new Asked();
    fill(given, request, asked);
    asked.refuseIfFaulty();
    AbsenceRow row = absences.findSame(person.id, given.starts, given.ends).orElse(given);
    row.personId = person.id;
    row.reason = given.reason;
    absences.persistAndFlush(row);
    return row.toAbsence();
  }

  /** Forgets all of them, for a demo that is made anew. */
  public void forgetAll() {
    absences.deleteAll();
  }

  /**
   * The person is back: it ends now, or is struck out if it has not begun.
   *
   * @return whether anything is left of it
   * @throws Refused if that person has none of that id
   */
  public boolean end(String slug, String id) {
    AbsenceRow row = absences.get(people.getBySlug(slug).id, id);
    Instant now = clock.instant();
    if (!row.starts.isBefore(now)) {
      absences.delete(row);
      return false;
    }
    if (row.ends == null || row.ends.isAfter(now)) {
      row.ends = now;
    }
    return true;
  }

  /**
   * Strikes it out, as if it had never been said.
   *
   * @throws Refused if that person has none of that id
   */
  public void remove(String slug, String id) {
    absences.delete(absences.get(people.getBySlug(slug).id, id));
  }

  private void fill(AbsenceRow row, Request request, Asked asked) {
    ZoneId zone = cluster.cluster().zone();
    String from = asked.text("from", request.from());
    String to = asked.text("to", request.to());
    row.reason = asked.text("reason", request.reason(), LONGEST_REASON);
    row.starts = from.isEmpty() ? clock.instant() : TypedMoment.read("from", from, 0, zone, asked);
    row.ends = to.isEmpty() ? null : TypedMoment.read("to", to, 1, zone, asked);
    if (!asked.isFaulty() && row.ends != null && !row.ends.isAfter(row.starts)) {
      asked.fault(
          "to", say("It ends (%s) before it begins (%s).", to, from.isEmpty() ? say("now") : from));
    }
  }
}
