package vestiary.planning;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import vestiary.allocation.Level;
import vestiary.allocation.Shortage;
import vestiary.cluster.Church;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;
import vestiary.web.NormWords;
import vestiary.web.Speech;

/** Accounts for every piece of the kind that is short, so that the numbers add up. */
final class ClashStock {

  /** Of many pieces so many are drawn and named; the number tells the rest. */
  private static final int MOST_DRAWN = 12;

  private final ClashScene scene;
  private final Shortage shortage;
  private final ShortageWords words;

  ClashStock(ClashScene scene, Shortage shortage) {
    this.scene = scene;
    this.shortage = shortage;
    this.words = scene.words(shortage);
  }

  private int all() {
    return shortage.pieces().size() + shortage.elsewhere().size() + shortage.notServing().size();
  }

  /** For example "The thirteen sets of the cluster that count as white". */
  String title() {
    String pieces = Speech.count(all(), words.noun(), words.noun(all()));
    return words.hasColour()
        ? say(
            all() == 1
                ? word("The %s of the cluster that counts as %s")
                : word("The %s of the cluster that count as %s"),
            pieces,
            Speech.colour(shortage.colour()))
        : say("The %s of the cluster", pieces);
  }

  List<ClashView.TallyLine> lines() {
    List<ClashView.TallyLine> lines = new ArrayList<>();
    if (!shortage.pieces().isEmpty()) {
      lines.add(
          line(
              shortage.pieces(),
              shortage.level() == Level.LOCAL ? say("here and free") : say("could serve"),
              true));
    }
    Map<String, List<Piece>> hindered = new LinkedHashMap<>();
    shortage
        .notServing()
        .forEach(
            n -> hindered.computeIfAbsent(scene.reason(n), k -> new ArrayList<>()).add(n.piece()));
    hindered.forEach((reason, pieces) -> lines.add(line(pieces, reason, false)));
    if (!shortage.elsewhere().isEmpty()) {
      lines.add(line(shortage.elsewhere(), say("elsewhere, could be carried here"), true));
    }
    return lines;
  }

  private static ClashView.TallyLine line(List<Piece> pieces, String words, boolean canBeHad) {
    return new ClashView.TallyLine(
        pieces.size(),
        pieces.stream()
            .limit(MOST_DRAWN)
            .map(p -> canBeHad ? p.colours().get(0).id() : "away")
            .toList(),
        words,
        pieces.stream().limit(MOST_DRAWN).map(ClashScene::name).collect(Collectors.joining(", "))
            + (pieces.size() > MOST_DRAWN ? say(" and %d more", pieces.size() - MOST_DRAWN) : ""));
  }

  List<String> steps() {
    return words.steps().stream()
        .map(
            step ->
                "%s (%s)."
                    .formatted(
                        Speech.sentence(say(step.sentence())), NormWords.source(step.source())))
        .toList();
  }

  List<String> carriages() {
    if (shortage.level() == Level.CLUSTER) {
      return List.of();
    }
    ChurchId here = shortage.needs().get(0).church();
    Map<ChurchId, List<Piece>> byHome =
        shortage.elsewhere().stream()
            .collect(Collectors.groupingBy(scene::lies, LinkedHashMap::new, Collectors.toList()));
    return byHome.entrySet().stream()
        .sorted(
            Comparator.comparing(
                e -> scene.findJourney(e.getKey(), here).orElse(Duration.ofDays(1))))
        .map(e -> carriage(e.getKey(), e.getValue(), here))
        .toList();
  }

  private String carriage(ChurchId from, List<Piece> pieces, ChurchId here) {
    Church church = scene.church(from);
    String minutes =
        scene.findJourney(from, here).map(d -> say(": %d minutes", d.toMinutes())).orElse("");
    return say(
        "%s from %s, %s%s.",
        Speech.sentence(words.counted(pieces.size())), church.name(), church.place(), minutes);
  }

  String total() {
    return say("%s, each counted once.", Speech.sentence(Speech.count(all())));
  }
}
