package vestiary.people;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.problem.Refused;

/** Who is away when. */
@ApplicationScoped
@Transactional
public class ReadAbsences {

  private final AbsenceRows absences;
  private final PersonRows people;
  private final KeepArrival arrivals;
  private final CurrentVisitor visitor;

  ReadAbsences(
      AbsenceRows absences, PersonRows people, KeepArrival arrivals, CurrentVisitor visitor) {
    this.arrivals = arrivals;
    this.absences = absences;
    this.people = people;
    this.visitor = visitor;
  }

  /** All that meet that time, by their beginning; {@code until} is not included. */
  public List<Absence> between(Instant from, Instant until) {
    return absences.between(from, until).stream().map(AbsenceRow::toAbsence).toList();
  }

  /** Those of one person that are not over at that moment, by their beginning. */
  public List<Absence> of(UUID person, Instant moment) {
    return absences.since(person, moment).stream().map(AbsenceRow::toAbsence).toList();
  }

  /**
   * That of a person which an address names.
   *
   * @throws Refused if that person has none of that id
   */
  public Absence get(UUID person, String id) {
    return absences.get(person, id).toAbsence();
  }

  /** Who of the cluster is there in that time; {@code until} is not included. */
  public Attendance attendance(Instant from, Instant until) {
    return new Attendance(
        between(from, until),
        people.present().stream()
            .map(PersonRow::toPerson)
            .filter(person -> person.role().canCelebrate() && !person.isVisiting())
            .toList(),
        arrivals.between(from, until));
  }

  /** Why, by the ids of those absences of which it was said; nothing for whoever may not know. */
  public Map<UUID, String> reasons(Collection<Absence> of) {
    if (!visitor.visitor().may(Action.KEEP_PEOPLE)) {
      return Map.of();
    }
    return absences.list("id in ?1", of.stream().map(Absence::id).toList()).stream()
        .filter(row -> !row.reason.isEmpty())
        .collect(Collectors.toMap(row -> row.id, row -> row.reason));
  }
}
