package vestiary.assigning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import vestiary.allocation.celebrant.Want;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.English;

/** What shows that a Mass cannot be served, in sentences. */
final class WantWords {

  private final Scene scene;
  private final Map<MassId, DatedMass> masses;

  WantWords(Scene scene) {
    this.scene = scene;
    this.masses = scene.byId();
  }

  List<String> of(Want want) {
    if (want.ground() == Want.Ground.SEARCHED) {
      return List.of(
          "All divisions were looked through, and none serves this Mass without leaving another.");
    }
    if (want.masses().size() == 1) {
      return List.of("No priest could take it, whatever else is given to whom.");
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "These are %s: %s."
            .formatted(
                English.count(want.masses().size(), "Mass"),
                English.list(want.masses().stream().map(this::mass).toList())));
    if (want.ground() == Want.Ground.COUNTED) {
      int sum = want.most().stream().mapToInt(Want.Most::masses).sum();
      sentences.add(
          "%s; that makes %s."
              .formatted(
                  English.sentence(English.list(want.most().stream().map(this::most).toList())),
                  English.count(sum)));
    } else {
      sentences.add(
          "However they are divided among %s, one stays over: all ways were tried."
              .formatted(
                  English.list(
                      want.most().stream()
                          .map(one -> scene.person(one.priest()).tightName())
                          .toList())));
    }
    return sentences;
  }

  private String mass(MassId id) {
    DatedMass mass = masses.get(id);
    return "%s at %s".formatted(English.clock(mass.start()), mass.church().name());
  }

  private String most(Want.Most most) {
    return "%s could take %s"
        .formatted(
            scene.person(most.priest()).tightName(),
            most.masses() == 1 ? "one of them" : English.count(most.masses()) + " of them");
  }
}
