package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import vestiary.allocation.Certificate;
import vestiary.allocation.Certificate.Chains;
import vestiary.allocation.Certificate.Exhaustion;
import vestiary.allocation.Certificate.ForcedChoices;
import vestiary.allocation.Certificate.Taken;
import vestiary.allocation.Shortage;
import vestiary.vesting.Need;
import vestiary.web.Speech;

/** Sets out in a table what shows a shortage. */
final class ProofSheet {

  private static final String IN_TIME = word("In time");

  private final ClashScene scene;
  private final Shortage shortage;
  private final ProofWords words;
  private final LongList needs;

  ProofSheet(ClashScene scene, Shortage shortage) {
    this.scene = scene;
    this.shortage = shortage;
    this.words = scene.proofWords(shortage);
    this.needs = new LongList(shortage);
  }

  ProofView view() {
    Certificate certificate = shortage.certificate();
    if (certificate instanceof Chains chains) {
      return chains(chains);
    }
    if (certificate instanceof ForcedChoices forced) {
      return forced(forced);
    }
    if (certificate instanceof Exhaustion exhaustion) {
      return exhaustion(exhaustion);
    }
    return needs.isLong() ? byChurch() : ProofView.COUNTED;
  }

  private ProofView chains(Chains chains) {
    return new ProofView(
        say(IN_TIME),
        say("What each can serve at most"),
        List.of(say("Piece"), say("At most"), say("For example")),
        chains.chains().stream()
            .map(
                chain ->
                    List.of(
                        ProofWords.name(chain.piece()),
                        Speech.count(chain.needs().size()),
                        then(chain.needs())))
            .toList(),
        say(
            "%s together, and %s are needed.",
            Speech.sentence(Speech.count(chains.atMost())), Speech.count(shortage.needed())));
  }

  private String then(List<Need> needs) {
    return needs.stream().map(words::need).collect(Collectors.joining(say(", then ")));
  }

  private ProofView forced(ForcedChoices forced) {
    List<List<String>> rows = new ArrayList<>();
    forced
        .choices()
        .forEach(
            choice ->
                rows.add(
                    List.of(
                        String.valueOf(rows.size() + 1),
                        words.need(choice.need()),
                        ProofWords.oneOf(choice.pieces()),
                        since(choice.gone()))));
    rows.add(
        List.of(
            String.valueOf(rows.size() + 1),
            words.need(forced.without()),
            say("none"),
            since(forced.gone())));
    return new ProofView(
        say(IN_TIME),
        say("One choice after another"),
        List.of("", say("For"), say("Left"), say("Since")),
        rows,
        "");
  }

  private String since(List<Taken> gone) {
    return gone.isEmpty()
        ? say("nothing else can serve it")
        : gone.stream().map(words::gone).collect(Collectors.joining("; "));
  }

  private ProofView exhaustion(Exhaustion exhaustion) {
    return new ProofView(
        say(IN_TIME),
        say("What could serve each"),
        List.of(say("For"), say("Could serve")),
        exhaustion.options().stream()
            .map(option -> List.of(words.need(option.need()), ProofWords.oneOf(option.pieces())))
            .toList(),
        say("Tried in every order that the hours and journeys allow."));
  }

  /** For needs too many to be drawn: how many at each church, and the hours between which. */
  private ProofView byChurch() {
    Map<String, List<Need>> churches =
        shortage.needs().stream()
            .collect(Collectors.groupingBy(scene::church, TreeMap::new, Collectors.toList()));
    return new ProofView(
        "",
        say("Needed at each church"),
        List.of(say("Church"), say("Needed"), say("Set out from"), say("Put away by")),
        churches.entrySet().stream().map(e -> row(e.getKey(), e.getValue())).toList(),
        Speech.sentence(Speech.count(shortage.needed())) + say(" together.") + nearest());
  }

  private String nearest() {
    return shortage.masses().size() == 1
        ? ""
        : needs.nearest(scene::findJourney).stream()
            .map(words::need)
            .distinct()
            .collect(Collectors.joining("; ", say(" Nearest to one another: "), "."));
  }

  private List<String> row(String church, List<Need> own) {
    Instant from =
        own.stream().map(n -> n.window().setOut()).min(Comparator.naturalOrder()).orElseThrow();
    Instant to =
        own.stream().map(n -> n.window().cleared()).max(Comparator.naturalOrder()).orElseThrow();
    return List.of(church, String.valueOf(own.size()), scene.clock(from), scene.clock(to));
  }
}
