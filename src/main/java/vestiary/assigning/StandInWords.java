package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.util.List;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;
import vestiary.people.Person;
import vestiary.planning.MassWords;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Says who could take the Masses whose celebrant is away. */
final class StandInWords {

  private StandInWords() {}

  static StandInsView view(ProposeCelebrants.Found found, List<RiteStandIn> rites, String back) {
    List<MassToServe> changed = found.changed();
    return new StandInsView(
        found.question().masses().isEmpty()
            ? ""
            : lead(found.question().masses().size(), changed.size()),
        changed.stream().map(mass -> taken(mass, found)).toList(),
        found.proposal().wants().stream().map(want -> wanting(want.mass(), found)).toList(),
        changed.stream().map(mass -> ProposalSheet.value(mass, found)).toList(),
        rites.stream().map(StandInWords::rite).toList(),
        back);
  }

  private static Link rite(RiteStandIn one) {
    DatedMass rite = one.rite();
    String which = "%s, %s".formatted(ProposalSheet.when(rite), MassWords.noun(rite));
    return new Link(
        one.able().isEmpty()
            ? say("%s: nobody of the cluster could lead it", which)
            : say(
                "%s: %s could lead it",
                which, Speech.list(one.able().stream().map(Person::inWords).toList())),
        "/masses/" + rite.id().value());
  }

  private static String lead(int all, int taken) {
    String masses =
        all == 1
            ? say("The celebrant of one Mass is away.")
            : say("The celebrants of %s are away.", Speech.count(all, "Mass"));
    return masses + " " + whoTakesThem(all, taken);
  }

  private static String whoTakesThem(int all, int taken) {
    if (taken == 0) {
      return all == 1
          ? say("Nobody of the cluster can take it.")
          : say("Nobody of the cluster can take any of them.");
    }
    return taken == all
        ? say("Nobody else is moved if it is done so:")
        : Speech.sentence(
            say("%s can be taken by another, and nobody else is moved:", Speech.count(taken)));
  }

  private static Link taken(MassToServe mass, ProposeCelebrants.Found found) {
    PriestId celebrant = found.proposal().findCelebrant(mass.id()).orElseThrow();
    DatedMass dated = found.scene().find(mass.id()).orElseThrow();
    return new Link(
        say(
            "%s: %s, in place of %s",
            ProposalSheet.when(dated),
            found.scene().person(celebrant).inWords(),
            dated.findCelebrant().orElseThrow().inWords()),
        address(mass.id()));
  }

  private static Link wanting(MassId mass, ProposeCelebrants.Found found) {
    return new Link(
        say(
            "%s: why, and the ways out",
            ProposalSheet.when(found.scene().find(mass).orElseThrow())),
        address(mass));
  }

  private static String address(MassId mass) {
    return "/masses/%s/celebrant".formatted(mass.value());
  }
}
