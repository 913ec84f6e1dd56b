package vestiary.planning;

import static vestiary.web.Speech.choice;
import static vestiary.web.Speech.clock;
import static vestiary.web.Speech.count;
import static vestiary.web.Speech.list;
import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.allocation.Certificate;
import vestiary.allocation.Certificate.Chain;
import vestiary.allocation.Certificate.Chains;
import vestiary.allocation.Certificate.Choice;
import vestiary.allocation.Certificate.ForcedChoices;
import vestiary.allocation.Certificate.Taken;
import vestiary.allocation.Shortage;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.web.Speech;

/** Says in one sentence why the pieces do not suffice, each step of which can be followed. */
final class ProofWords {

  /** More pieces are counted, not named. */
  private static final int MOST_NAMED = 6;

  private final Shortage shortage;
  private final Map<MassId, DatedMass> masses;
  private final Map<MassId, Long> needsOfMass;

  ProofWords(Shortage shortage, Map<MassId, DatedMass> masses) {
    this.shortage = shortage;
    this.masses = masses;
    this.needsOfMass =
        shortage.needs().stream().collect(Collectors.groupingBy(Need::mass, Collectors.counting()));
  }

  String sentence() {
    Certificate certificate = shortage.certificate();
    if (certificate instanceof Chains chains) {
      return chains(chains);
    }
    if (certificate instanceof ForcedChoices forced) {
      return forced(forced);
    }
    return switch (certificate.kind()) {
      case ALL_CLASH -> allClash();
      case EXHAUSTION -> exhaustion();
      default ->
          say(
                  "This could not be proven: checked again, the proof did not hold. That is a fault of this")
              + say(" program and has been noted; please count by hand before you act on it.");
    };
  }

  private String allClash() {
    if (shortage.needed() == 1) {
      return say("No piece can serve it.");
    }
    String both =
        shortage.needed() == 2
            ? say("both of these")
            : say("two of these ") + count(shortage.needed());
    String serve =
        shortage.available() == 0
            ? say("none serves any")
            : count(shortage.available()) + say(" can serve");
    return say("No piece can serve %s, and %s: %s short.", both, serve, count(shortage.missing()));
  }

  private String chains(Chains chains) {
    List<Chain> each = chains.chains();
    String serve =
        each.size() > MOST_NAMED
            ? say(
                "the %s serve at most %s of these",
                count(each.size(), "piece"), count(chains.atMost()))
            : list(each.stream().map(ProofWords::most).toList()) + say(" of these");
    String together =
        each.size() > MOST_NAMED || each.size() == 1
            ? ""
            : say(": %s together", count(chains.atMost()));
    return say(
        "One after another, %s%s, but %s are needed.", serve, together, count(shortage.needed()));
  }

  private static String most(Chain chain) {
    return say("%s serves at most %s", name(chain.piece()), count(chain.needs().size()));
  }

  private String forced(ForcedChoices forced) {
    List<String> said = new ArrayList<>();
    for (Choice choice : forced.choices()) {
      String pieces = oneOf(choice.pieces());
      said.add(
          choice.gone().isEmpty()
              ? say("only %s can serve %s", pieces, need(choice.need()))
              : say("so only %s is left for %s", pieces, need(choice.need())));
    }
    said.add(say("so none is left for %s.", need(forced.without())));
    return Speech.sentence(String.join("; ", said));
  }

  private String exhaustion() {
    return say(
        "Every way to give the %s to these %s was tried, and each leaves one without; any %s of them can be served.",
        count(shortage.available(), "piece"),
        count(shortage.needed()),
        count(shortage.needed() - 1));
  }

  /**
   * For example "Saint Anne, 10:30", with the colour where there are several, and the wearer where
   * several of that Mass are concerned.
   */
  String need(Need need) {
    DatedMass mass = masses.get(need.mass());
    String colour = ofOneColour() ? "" : say(", in %s", Speech.colour(need.colour()));
    String place = "%s, %s%s".formatted(mass.church().name(), clock(mass.start()), colour);
    return needsOfMass.getOrDefault(need.mass(), 1L) == 1
        ? place
        : say("%s at %s", who(need), place);
  }

  private boolean ofOneColour() {
    return shortage.needs().stream().map(Need::colour).distinct().count() == 1;
  }

  private static String who(Need need) {
    String noun = RoleWords.noun(need.role());
    return RoleWords.isTheOne(need.role())
        ? Speech.the(noun)
        : Speech.noun(1, noun) + " " + need.ordinal();
  }

  /** For example "SA-W1 goes to Saint Anne, 10:30". */
  String gone(Taken taken) {
    List<String> by = taken.by().stream().map(this::need).toList();
    return say(
        taken.pieces().size() == 1 ? word("%s goes to %s") : word("%s go to %s"),
        list(taken.pieces().stream().map(ProofWords::name).toList()),
        String.join(say(" and "), by));
  }

  /** For example "SA-W1 or SA-W2". */
  static String oneOf(List<Piece> pieces) {
    return choice(pieces.stream().map(ProofWords::name).toList());
  }

  static String name(Piece piece) {
    return ClashScene.name(piece);
  }
}
