package vestiary.remedy;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.plan.Provision;
import vestiary.allocation.remedy.Change;
import vestiary.allocation.remedy.Remedy;
import vestiary.people.CarrierName;
import vestiary.planning.ChangeValue;
import vestiary.planning.OfferedRemedy;
import vestiary.planning.StepWords;
import vestiary.pool.OwnerPolicy;
import vestiary.pool.PooledPiece;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Step;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Puts a remedy in words: what is done, how, and what it costs. */
final class RemedyWords {

  private static final Set<PieceKind> STOLES = Set.of(PieceKind.STOLE, PieceKind.DEACON_STOLE);

  private final RemedyScene scene;
  private final ChangeWords words;
  private final ChangeValues values;

  RemedyWords(RemedyScene scene) {
    this.scene = scene;
    this.words = new ChangeWords(scene);
    this.values = new ChangeValues(scene);
  }

  OfferedRemedy of(Remedy remedy, Deed deed, int place, String fingerprint) {
    Change change = remedy.change();
    List<Journey> journeys = Journey.of(deed.added().carried());
    String sentence = words.sentence(change) + ".";
    List<ChangeValue> changes = new ArrayList<>();
    changes.add(values.of(change, sentence));
    journeys.forEach(way -> changes.add(values.of(way, journey(way))));
    return new OfferedRemedy(
        place,
        sentence,
        how(remedy, journeys),
        new CostWords(remedy, journeys, owners(remedy, journeys)).sentence(),
        also(remedy),
        change instanceof Change.TakeStep step ? step.step().source() : "",
        remedy.cost(),
        changes,
        OfferRemedies.isAdvice(remedy),
        change instanceof Change.TakeStep,
        remedy.onAsking(),
        fingerprint);
  }

  private String how(Remedy remedy, List<Journey> journeys) {
    List<String> how = new ArrayList<>();
    if (remedy.change() instanceof Change.TakeStep step) {
      how.add(lawful(step.step()));
    } else if (remedy.change() instanceof Change.BringOwn) {
      how.add(say("It is noted for the Mass as agreed; ask first."));
    } else if (remedy.change() instanceof Change.Borrow) {
      how.add(
          say(
              "From a neighbour or the diocese; once it is here, enter it under Vestments with its owner."));
    } else if (remedy.change() instanceof Change.BringBack) {
      how.add(say("Once it is back, end its care under Vestments."));
    }
    journeys.forEach(way -> how.add(journey(way)));
    return String.join(" ", how);
  }

  /** RS 124: where the need is foreseen, vestments are to be provided as far as possible. */
  private static String lawful(Step step) {
    String sentence =
        say("Lawful: %s (%s).", say(step.sentence()), NormWords.source(step.source()));
    return step == Step.STOLE_OVER_ALB
        ? sentence + say(" For a just cause; as far as possible vestments are to be provided.")
        : sentence;
  }

  private String journey(Journey way) {
    String takes =
        way.carrier().isEmpty()
            ? say("Somebody brings %s", named(way.pieces()))
            : say("%s takes %s along", CarrierName.of(way.carrier()), named(way.pieces()));
    String ready =
        way.ready().stream()
            .map(from -> say("free from %s, ", scene.clock(from)))
            .findFirst()
            .orElse("");
    return say(
        "%s: %sleaves %s by %s, at %s by %s.",
        takes,
        ready,
        scene.church(way.from()),
        scene.clock(way.leaveBy()),
        scene.church(way.to()),
        scene.clock(way.arriveBy()));
  }

  /** Sets by their own code; a stole that travels without its chasuble by its own. */
  private String named(List<String> codes) {
    Set<String> whole =
        codes.stream()
            .map(scene::piece)
            .filter(piece -> !STOLES.contains(piece.kind()) && !piece.set().isEmpty())
            .map(PooledPiece::set)
            .collect(Collectors.toSet());
    return Speech.list(
        codes.stream()
            .map(scene::piece)
            .map(piece -> whole.contains(piece.set()) ? piece.set() : piece.code())
            .distinct()
            .toList());
  }

  /** What others would wear for it, where that is less than it was. */
  private List<String> also(Remedy remedy) {
    return remedy.changed().stream()
        .filter(one -> one.depth() > 0 || one instanceof Provision.Unmet)
        .map(
            one -> {
              DatedMass mass = scene.mass(one.need().mass());
              String then =
                  one.findStep()
                      .map(StepWords::worn)
                      .orElse(say("short of a %s", Speech.noun(1, one.need().kind().id())));
              return say(
                  "At %s, %s, %s would be %s.",
                  mass.church().name(),
                  Speech.clock(mass.start()),
                  ChangeWords.persons(one.need().role(), 1),
                  then);
            })
        .distinct()
        .toList();
  }

  private List<String> owners(Remedy remedy, List<Journey> journeys) {
    Stream<String> carried =
        Stream.concat(
            journeys.stream().flatMap(way -> way.pieces().stream()),
            remedy.change() instanceof Change.Carry carry
                ? carry.pieces().stream().map(Piece::code)
                : Stream.of());
    return carried
        .map(scene::piece)
        .filter(piece -> piece.ownerPolicy() == OwnerPolicy.ASKING)
        .map(PooledPiece::owner)
        .distinct()
        .toList();
  }
}
