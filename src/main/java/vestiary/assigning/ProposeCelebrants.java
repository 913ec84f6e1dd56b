package vestiary.assigning;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Predicate;
import org.jboss.logging.Logger;
import vestiary.allocation.celebrant.DivideMasses;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Proposal;
import vestiary.allocation.celebrant.ProposalProof;
import vestiary.allocation.celebrant.Question;
import vestiary.allocation.celebrant.Timetable;
import vestiary.allocation.solver.Solvers;
import vestiary.allocation.solver.Work;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;

/**
 * Proposes who celebrates where. Nothing is kept: the same Masses and priests get the same proposal
 * whenever somebody looks. While it is worked out no connection to the database is held.
 */
@ApplicationScoped
class ProposeCelebrants {

  private static final Logger LOG = Logger.getLogger(ProposeCelebrants.class);

  /** A month of a large cluster is proven long before. */
  private static final Work WORK = Work.of(10);

  private final ReadScene read;

  ProposeCelebrants(ReadScene read) {
    this.read = read;
  }

  /** What was asked, and the answer to it. */
  record Found(Scene scene, Question question, Proposal proposal) {

    /** Who would celebrate what, Masses that were not looked at included. */
    Map<MassId, PriestId> then() {
      Map<MassId, PriestId> then = new HashMap<>(scene.asNow());
      question.masses().forEach(mass -> then.remove(mass.id()));
      then.putAll(proposal.given());
      return then;
    }

    /**
     * The Masses whose celebrant would have more that day than the law itself allows (can. 905).
     */
    List<MassToServe> beyondLaw() {
      Map<PriestId, Timetable> timetables = Timetable.all(question, proposal.given());
      return question.masses().stream()
          .filter(mass -> proposal.given().containsKey(mass.id()))
          .filter(
              mass ->
                  timetables.get(proposal.given().get(mass.id())).number(mass.id(), mass.day())
                      > mass.day().byLaw())
          .toList();
    }

    /** The Masses that would get another celebrant than is named now, by start. */
    List<MassToServe> changed() {
      return question.masses().stream()
          .filter(mass -> proposal.given().containsKey(mass.id()))
          .filter(mass -> !mass.now().contains(proposal.given().get(mass.id())))
          .toList();
    }
  }

  /**
   * For all Masses ahead on some dates.
   *
   * @param last included
   */
  Found propose(LocalDate first, LocalDate last) {
    Scene scene = read.between(first, last);
    return answer(scene, Ask.ofAll(scene));
  }

  /**
   * For the Masses ahead of one priest alone, as if he were away on these dates: all others keep
   * what is theirs.
   *
   * @param last included
   */
  Found proposeWithout(UUID person, LocalDate first, LocalDate last) {
    Scene scene = read.between(first, last).without(person);
    return replace(
        scene, mass -> mass.celebrants().stream().anyMatch(one -> one.id().equals(person)));
  }

  /** For some Masses ahead alone, on the dates of the scene: all others keep who is named. */
  Found replace(Scene scene, Predicate<DatedMass> which) {
    return answer(
        scene,
        Ask.of(
            scene,
            scene.cluster().policies().countBy(),
            mass -> scene.isAhead(mass) && which.test(mass)));
  }

  private static Found answer(Scene scene, Question question) {
    Proposal proposal = DivideMasses.divide(question, Solvers.best(), WORK);
    List<String> objections = ProposalProof.findObjections(question, proposal);
    if (!objections.isEmpty()) {
      LOG.errorf("A proposal does not pass the check: %s", objections);
      throw new IllegalStateException("A proposal does not pass the check");
    }
    return new Found(scene, question, proposal);
  }
}
