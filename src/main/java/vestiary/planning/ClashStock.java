package vestiary.planning;

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
import vestiary.web.English;

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
    String pieces =
        all() == 1 ? "one " + words.noun(1) : English.count(all()) + " " + words.noun(all());
    return words.hasColour()
        ? "The %s of the cluster that %s as %s"
            .formatted(pieces, all() == 1 ? "counts" : "count", shortage.colour().id())
        : "The %s of the cluster".formatted(pieces);
  }

  List<ClashView.TallyLine> lines() {
    List<ClashView.TallyLine> lines = new ArrayList<>();
    if (!shortage.pieces().isEmpty()) {
      lines.add(
          line(
              shortage.pieces(),
              shortage.level() == Level.LOCAL ? "here and free" : "could serve",
              true));
    }
    Map<String, List<Piece>> hindered = new LinkedHashMap<>();
    shortage
        .notServing()
        .forEach(
            n -> hindered.computeIfAbsent(scene.reason(n), k -> new ArrayList<>()).add(n.piece()));
    hindered.forEach((reason, pieces) -> lines.add(line(pieces, reason, false)));
    if (!shortage.elsewhere().isEmpty()) {
      lines.add(line(shortage.elsewhere(), "elsewhere, could be carried here", true));
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
            + (pieces.size() > MOST_DRAWN
                ? " and %d more".formatted(pieces.size() - MOST_DRAWN)
                : ""));
  }

  List<String> steps() {
    return words.steps().stream()
        .map(step -> "%s (%s).".formatted(English.sentence(step.sentence()), step.source()))
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
        scene.findJourney(from, here).map(d -> ": %d minutes".formatted(d.toMinutes())).orElse("");
    return "%s %s from %s, %s%s."
        .formatted(
            English.sentence(English.count(pieces.size())),
            words.tinted(words.noun(pieces.size())),
            church.name(),
            church.place(),
            minutes);
  }

  String total() {
    return English.sentence(English.count(all())) + ", each counted once.";
  }
}
