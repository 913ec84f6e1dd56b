package vestiary.allocation.celebrant;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.vesting.MassId;

/**
 * Checks a proposal without any solver: that everybody can take what he is given, that it is as
 * good as it says, and that what shows a want shows it.
 */
public final class ProposalProof {

  private final Question question;
  private final Proposal proposal;
  private final List<String> objections = new ArrayList<>();

  private ProposalProof(Question question, Proposal proposal) {
    this.question = question;
    this.proposal = proposal;
  }

  /** What is wrong with it, for the log; empty if nothing is. */
  public static List<String> findObjections(Question question, Proposal proposal) {
    ProposalProof proof = new ProposalProof(question, proposal);
    proof.checkGiven();
    proof.checkLevels();
    proof.checkWants();
    return proof.objections;
  }

  private void checkGiven() {
    Map<PriestId, Timetable> timetables = Timetable.all(question, proposal.given());
    proposal
        .given()
        .forEach(
            (id, priest) -> {
              Optional<MassToServe> mass = question.find(id);
              Timetable his = timetables.get(priest);
              if (mass.isEmpty() || his == null) {
                objections.add("Mass " + id.value() + " or its celebrant is not of the question");
              } else {
                his.findWhyNot(mass.get())
                    .ifPresent(why -> objections.add("Mass " + id.value() + ": " + why));
              }
            });
  }

  private void checkLevels() {
    Levels levels = new Reckoning(question).levels(proposal.given());
    if (!levels.equals(proposal.values())) {
      objections.add("The levels are " + levels + " and not " + proposal.values());
    }
    if (proposal.proven() && !proposal.bounds().equals(proposal.values())) {
      objections.add("It is called proven and is not: " + proposal.bounds());
    }
  }

  private void checkWants() {
    List<MassId> unserved =
        question.masses().stream()
            .map(MassToServe::id)
            .filter(mass -> !proposal.given().containsKey(mass))
            .toList();
    if (!unserved.equals(proposal.wants().stream().map(Want::mass).toList())) {
      objections.add("Not every Mass without a celebrant has its want");
    }
    proposal.wants().stream()
        .flatMap(want -> WantProof.findObjections(question, want).stream())
        .forEach(objections::add);
  }
}
