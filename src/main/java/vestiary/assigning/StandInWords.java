package vestiary.assigning;

import java.util.List;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.English;
import vestiary.web.Link;

/** Says who could take the Masses whose celebrant is away. */
final class StandInWords {

  private StandInWords() {}

  static StandInsView view(ProposeCelebrants.Found found, String back) {
    List<MassToServe> changed = found.changed();
    return new StandInsView(
        lead(found.question().masses().size(), changed.size()),
        changed.stream().map(mass -> taken(mass, found)).toList(),
        found.proposal().wants().stream().map(want -> wanting(want.mass(), found)).toList(),
        changed.stream().map(mass -> ProposalSheet.value(mass, found)).toList(),
        back);
  }

  private static String lead(int all, int taken) {
    String masses =
        all == 1
            ? "The celebrant of one Mass is away."
            : "The celebrants of %s are away.".formatted(English.count(all, "Mass"));
    if (taken == 0) {
      return masses + " Nobody of the cluster can take " + (all == 1 ? "it." : "any of them.");
    }
    return taken == all
        ? masses + " Nobody else is moved if it is done so:"
        : "%s %s can be taken by another, and nobody else is moved:"
            .formatted(masses, English.sentence(English.count(taken)));
  }

  private static Link taken(MassToServe mass, ProposeCelebrants.Found found) {
    PriestId celebrant = found.proposal().findCelebrant(mass.id()).orElseThrow();
    DatedMass dated = found.scene().find(mass.id()).orElseThrow();
    String instead =
        dated.findCelebrant().map(one -> ", in place of " + one.calledName()).orElse("");
    return new Link(
        "%s: %s%s"
            .formatted(
                ProposalSheet.when(dated), found.scene().person(celebrant).calledName(), instead),
        address(mass.id()));
  }

  private static Link wanting(MassId mass, ProposeCelebrants.Found found) {
    return new Link(
        ProposalSheet.when(found.scene().find(mass).orElseThrow()) + ": why, and the ways out",
        address(mass));
  }

  private static String address(MassId mass) {
    return "/masses/%s/celebrant".formatted(mass.value());
  }
}
