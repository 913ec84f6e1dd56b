package vestiary.assigning;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import vestiary.allocation.celebrant.Beside;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;
import vestiary.allocation.celebrant.Proposal;
import vestiary.allocation.celebrant.Want;
import vestiary.planning.MassWords;
import vestiary.schedule.DatedMass;
import vestiary.web.Frames;
import vestiary.web.Link;
import vestiary.web.Speech;

/** Sets out what a proposal would change. */
@ApplicationScoped
class ProposalSheet {

  private final Frames frames;
  private final AdviseOnMass advise;

  ProposalSheet(Frames frames, AdviseOnMass advise) {
    this.frames = frames;
    this.advise = advise;
  }

  /**
   * @param title for example "Proposal for 7 to 13 December 2026"
   * @param address of the page itself
   */
  ProposalView of(ProposeCelebrants.Found found, String title, String address) {
    Scene scene = found.scene();
    Dates dates = new Dates(scene.first(), scene.last());
    List<MassToServe> changed = found.changed();
    return new ProposalView(
        frames.of("week", address),
        title,
        lead(found, changed),
        how(found),
        List.of(new Link(say("← Who celebrates where"), dates.address())),
        changed.stream().map(mass -> changed(mass, found)).toList(),
        changed.stream().map(mass -> value(mass, found)).toList(),
        found.proposal().wants().stream().map(want -> wanting(want, found)).toList(),
        shares(found),
        CelebrantsSheet.sharesNote(scene),
        dates.address());
  }

  private static String lead(ProposeCelebrants.Found found, List<MassToServe> changed) {
    String all =
        Speech.sentence(Speech.count(found.question().masses().size(), "Mass"))
            + say(" looked at.");
    int wants = found.proposal().wants().size();
    return "%s %s %s"
        .formatted(
            all,
            changes(found.scene(), changed),
            wants == 0
                ? say("Nobody is wanting.")
                : say("For ") + Speech.count(wants) + say(" there is nobody."));
  }

  private static String changes(Scene scene, List<MassToServe> changed) {
    int first =
        (int)
            changed.stream()
                .filter(mass -> scene.find(mass.id()).orElseThrow().findCelebrant().isEmpty())
                .count();
    int another = changed.size() - first;
    if (changed.isEmpty()) {
      return say("None gets another celebrant.");
    }
    List<String> sentences = new ArrayList<>();
    if (first > 0) {
      sentences.add(
          first == 1
              ? say("One gets a celebrant.")
              : Speech.sentence(say("%s get a celebrant.", Speech.count(first))));
    }
    if (another > 0) {
      sentences.add(
          another == 1
              ? say("One gets another celebrant.")
              : Speech.sentence(say("%s get another celebrant.", Speech.count(another))));
    }
    return String.join(" ", sentences);
  }

  private static String how(ProposeCelebrants.Found found) {
    Proposal proposal = found.proposal();
    String best =
        proposal.proven()
            ? say("No division is better: this is proven.")
            : say("A better one may exist; the search was ended where it would have taken long.");
    return found.beyondLaw().isEmpty()
        ? best + say(" Nobody celebrates more than once a day beyond what the law itself allows.")
        : best
            + say(
                " Some celebrate more than once a day, as few as there can be: only because priests are wanting (can. 905 § 2).");
  }

  private ProposalView.Changed changed(MassToServe mass, ProposeCelebrants.Found found) {
    Scene scene = found.scene();
    DatedMass dated = scene.find(mass.id()).orElseThrow();
    PriestId celebrant = found.proposal().findCelebrant(mass.id()).orElseThrow();
    BesideWords words = new BesideWords(scene, new WhyNotWords(scene, found.question().pace()));
    return new ProposalView.Changed(
        when(dated),
        what(dated, scene),
        scene.person(celebrant).calledName(),
        dated.findCelebrant().map(one -> say("in place of %s", one.inWords())).orElse(""),
        words.of(mass, celebrant, Beside.all(found.question(), found.proposal().given(), mass)),
        value(mass, found),
        "/masses/%s/celebrant".formatted(mass.id().value()));
  }

  static String value(MassToServe mass, ProposeCelebrants.Found found) {
    PriestId celebrant = found.proposal().findCelebrant(mass.id()).orElseThrow();
    return Assigned.value(found.scene().find(mass.id()).orElseThrow(), celebrant.value());
  }

  private ProposalView.Wanting wanting(Want want, ProposeCelebrants.Found found) {
    Scene scene = found.scene();
    DatedMass dated = scene.find(want.mass()).orElseThrow();
    Advice advice = advise.of(scene, dated, found.then());
    WhyNotWords why = new WhyNotWords(scene, advice.pace());
    return new ProposalView.Wanting(
        when(dated),
        what(dated, scene),
        dated
            .findCelebrant()
            .map(one -> say("%s is named for it and cannot be there.", one.inWords()))
            .orElse(""),
        new WantWords(scene).of(want),
        AdviceSheet.reasons(advice, why),
        new WayWords(scene, advice.mass()).all(advice.ways()),
        "/masses/%s/celebrant".formatted(dated.id().value()));
  }

  private static List<ProposalView.ShareThen> shares(ProposeCelebrants.Found found) {
    List<CelebrantsView.Share> before = CountShares.of(found.scene(), found.scene().asNow());
    List<CelebrantsView.Share> after = CountShares.of(found.scene(), found.then());
    List<ProposalView.ShareThen> shares = new ArrayList<>();
    for (int place = 0; place < before.size(); place++) {
      shares.add(new ProposalView.ShareThen(before.get(place), after.get(place)));
    }
    return shares;
  }

  static String when(DatedMass mass) {
    return "%s, %s, %s"
        .formatted(Speech.day(mass.date()), Speech.clock(mass.start()), mass.church().name());
  }

  static String what(DatedMass mass, Scene scene) {
    return MassWords.whole(mass, Speech.localeOr(scene.cluster().language()));
  }
}
