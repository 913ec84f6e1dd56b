package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import vestiary.people.FindPeople;
import vestiary.people.Person;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.CelebrantState;
import vestiary.schedule.NameCelebrant;
import vestiary.vesting.MassId;

/** Names celebrants, all of them in one transaction or none, and undoes it. */
@ApplicationScoped
class AssignCelebrants {

  private final NameCelebrant name;
  private final KeepAsked asked;
  private final AssignmentRows rows;
  private final FindPeople people;
  private final Clock clock;

  AssignCelebrants(
      NameCelebrant name, KeepAsked asked, AssignmentRows rows, FindPeople people, Clock clock) {
    this.name = name;
    this.asked = asked;
    this.rows = rows;
    this.people = people;
    this.clock = clock;
  }

  /**
   * One Mass and its celebrant.
   *
   * @param expected who was named when the person looked; nobody or one
   */
  record Wanted(MassId mass, List<UUID> expected, UUID celebrant) {}

  /**
   * Names them. Whoever goes back and presses again is told of what was done the first time.
   *
   * @param wanted one or more
   * @param inPlace whether they stand in for those who were named until now, who then still count
   *     as asked for
   * @return the id under which it can be undone
   * @throws Refused if somebody is no celebrant, or a Mass was changed meanwhile; then nothing is
   */
  @Transactional
  UUID assign(List<Wanted> wanted, boolean inPlace) {
    return findSame(wanted).orElseGet(() -> assignAnew(wanted, inPlace));
  }

  private Optional<UUID> findSame(List<Wanted> wanted) {
    return rows.findLast()
        .filter(row -> Set.copyOf(wanted).equals(wanted(row)))
        .filter(row -> wanted.stream().allMatch(one -> name.isNamed(one.mass(), one.celebrant())))
        .map(row -> row.id);
  }

  private static Set<Wanted> wanted(AssignmentRow row) {
    return row.moves.stream()
        .map(
            move ->
                new Wanted(
                    new MassId(move.before().mass()), move.before().celebrant(), move.named()))
        .collect(Collectors.toSet());
  }

  private UUID assignAnew(List<Wanted> wanted, boolean inPlace) {
    List<AssignmentRow.Move> moves = new ArrayList<>();
    // Always in the same order, so that two who press at once do not wait for each other for ever.
    wanted.stream()
        .sorted(Comparator.comparing(Wanted::mass))
        .forEach(one -> moves.add(assignOne(one, inPlace)));
    AssignmentRow row = new AssignmentRow();
    row.assignedAt = clock.instant();
    row.moves = moves;
    rows.persistAndFlush(row);
    return row.id;
  }

  private AssignmentRow.Move assignOne(Wanted one, boolean inPlace) {
    Optional<Person> celebrant =
        people.find(one.celebrant()).filter(person -> person.role().canCelebrate());
    if (celebrant.isEmpty()) {
      throw new Refused(
          new Refusal.AgainstRule(
              "celebrant",
              say("Only a priest or a bishop of the list of people can celebrate a Mass.")));
    }
    CelebrantState before = name.name(one.mass(), one.expected(), one.celebrant());
    if (inPlace) {
      before.celebrant().forEach(former -> asked.note(one.mass().value(), former, one.celebrant()));
    }
    return new AssignmentRow.Move(before, one.celebrant());
  }

  /**
   * Puts back what was before; once that is done, doing it again changes nothing.
   *
   * @throws Refused if there is no such assignment, or a Mass of it was changed since
   */
  @Transactional
  void undo(String id) {
    AssignmentRow row = rows.getLocked(id);
    if (row.undoneAt == null) {
      for (AssignmentRow.Move move : row.moves) {
        name.putBack(move.before(), move.named());
        move.before()
            .celebrant()
            .forEach(former -> asked.note(move.before().mass(), move.named(), former));
      }
      row.undoneAt = clock.instant();
    }
  }

  /** How many Masses it named a celebrant for; empty if it is undone. */
  @Transactional
  Optional<Integer> findSize(String id) {
    AssignmentRow row = rows.getLocked(id);
    return row.undoneAt == null ? Optional.of(row.moves.size()) : Optional.empty();
  }
}
