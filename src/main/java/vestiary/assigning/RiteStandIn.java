package vestiary.assigning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import vestiary.allocation.celebrant.Engagement;
import vestiary.allocation.celebrant.Priest;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Timetable;
import vestiary.people.Person;
import vestiary.people.PersonRole;
import vestiary.planning.Serving;
import vestiary.schedule.DatedMass;

/**
 * Who could lead a liturgy that is no Mass in place of one who is away: whoever is there, serves in
 * that church and has the time. Such are not divided with the Masses, since can. 905 counts none of
 * them; somebody is named by hand.
 *
 * @param able deacons before priests, who may be needed for Masses (common practice, no source),
 *     each by surname; empty if nobody of the cluster could
 */
record RiteStandIn(DatedMass rite, List<Person> able) {

  RiteStandIn {
    able = List.copyOf(able);
  }

  /**
   * For all that is ahead, by start.
   *
   * @param found who takes the Masses of those who are away, who is not free for anything else then
   */
  static List<RiteStandIn> all(ProposeCelebrants.Found found) {
    Scene scene = found.scene().withDeacons();
    Question question = Ask.ofNothing(scene);
    List<Engagement> engagements = new ArrayList<>(question.engagements());
    found
        .changed()
        .forEach(
            mass ->
                engagements.add(
                    new Engagement(
                        found.proposal().findCelebrant(mass.id()).orElseThrow(),
                        mass.stay(),
                        mass.day(),
                        true,
                        0)));
    return scene.masses().stream()
        .filter(mass -> !mass.kind().isMass() && scene.isAhead(mass))
        .filter(mass -> StandIns.isAway(mass, scene))
        .map(rite -> new RiteStandIn(rite, able(rite, scene, question, engagements)))
        .toList();
  }

  private static List<Person> able(
      DatedMass rite, Scene scene, Question question, List<Engagement> engagements) {
    return scene.priests().stream()
        .filter(one -> isFree(one, rite, question, engagements))
        .map(one -> scene.person(one.id()))
        .filter(one -> one.role() != PersonRole.DEACON || rite.kind().canBeLedByDeacon())
        .sorted(
            Comparator.comparing((Person one) -> one.role() != PersonRole.DEACON)
                .thenComparing(Person::shortName))
        .toList();
  }

  /** Another part that he has in the same liturgy is no hindrance. */
  private static boolean isFree(
      Priest one, DatedMass rite, Question question, List<Engagement> engagements) {
    List<Engagement> his =
        engagements.stream().filter(other -> other.priest().equals(one.id())).toList();
    return Timetable.asNamed(question, one, his).findHindrance(Serving.stay(rite)).isEmpty();
  }
}
