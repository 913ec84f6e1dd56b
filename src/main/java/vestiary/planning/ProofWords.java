package vestiary.planning;

import static vestiary.web.English.choice;
import static vestiary.web.English.clock;
import static vestiary.web.English.count;
import static vestiary.web.English.list;

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
import vestiary.web.English;

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
          "This could not be proven: checked again, the proof did not hold. That is a fault of this"
              + " program and has been noted; please count by hand before you act on it.";
    };
  }

  private String allClash() {
    if (shortage.needed() == 1) {
      return "No piece can serve it.";
    }
    String both =
        shortage.needed() == 2 ? "both of these" : "two of these " + count(shortage.needed());
    String serve =
        shortage.available() == 0 ? "none serves any" : count(shortage.available()) + " can serve";
    return "No piece can serve %s, and %s: %s short."
        .formatted(both, serve, count(shortage.missing()));
  }

  private String chains(Chains chains) {
    List<Chain> each = chains.chains();
    String serve =
        each.size() > MOST_NAMED
            ? "the %s serve at most %s of these"
                .formatted(count(each.size(), "piece"), count(chains.atMost()))
            : list(each.stream().map(ProofWords::most).toList()) + " of these";
    String together =
        each.size() > MOST_NAMED || each.size() == 1
            ? ""
            : ": %s together".formatted(count(chains.atMost()));
    return "One after another, %s%s, but %s are needed."
        .formatted(serve, together, count(shortage.needed()));
  }

  private static String most(Chain chain) {
    return "%s serves at most %s".formatted(name(chain.piece()), count(chain.needs().size()));
  }

  private String forced(ForcedChoices forced) {
    List<String> said = new ArrayList<>();
    for (Choice choice : forced.choices()) {
      String pieces = oneOf(choice.pieces());
      said.add(
          choice.gone().isEmpty()
              ? "only %s can serve %s".formatted(pieces, need(choice.need()))
              : "so only %s is left for %s".formatted(pieces, need(choice.need())));
    }
    said.add("so none is left for %s.".formatted(need(forced.without())));
    return English.sentence(String.join("; ", said));
  }

  private String exhaustion() {
    return "Every way to give the %s to these %s was tried, and each leaves one without; any %s of them can be served."
        .formatted(
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
    String colour = ofOneColour() ? "" : ", in " + need.colour().id();
    String place = "%s, %s%s".formatted(mass.church().name(), clock(mass.start()), colour);
    return needsOfMass.getOrDefault(need.mass(), 1L) == 1 ? place : who(need) + " at " + place;
  }

  private boolean ofOneColour() {
    return shortage.needs().stream().map(Need::colour).distinct().count() == 1;
  }

  private static String who(Need need) {
    String noun = RoleWords.noun(need.role());
    return RoleWords.isTheOne(need.role()) ? "the " + noun : noun + " " + need.ordinal();
  }

  /** For example "SA-W1 goes to Saint Anne, 10:30". */
  String gone(Taken taken) {
    List<String> by = taken.by().stream().map(this::need).toList();
    return "%s %s to %s"
        .formatted(
            list(taken.pieces().stream().map(ProofWords::name).toList()),
            taken.pieces().size() == 1 ? "goes" : "go",
            String.join(" and ", by));
  }

  /** For example "SA-W1 or SA-W2". */
  static String oneOf(List<Piece> pieces) {
    return choice(pieces.stream().map(ProofWords::name).toList());
  }

  static String name(Piece piece) {
    return ClashScene.name(piece);
  }
}
