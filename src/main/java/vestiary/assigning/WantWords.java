package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import vestiary.allocation.celebrant.Want;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

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
          say(
              "All divisions were looked through, and none serves this Mass without leaving another."));
    }
    if (want.masses().size() == 1) {
      return List.of(say("No priest could take it, whatever else is given to whom."));
    }
    List<String> sentences = new ArrayList<>();
    sentences.add(
        say(
            "These are %s: %s.",
            Speech.count(want.masses().size(), "Mass"),
            Speech.list(want.masses().stream().map(this::mass).toList())));
    if (want.ground() == Want.Ground.COUNTED) {
      int sum = want.most().stream().mapToInt(Want.Most::masses).sum();
      sentences.add(
          say(
              "%s; that makes %s.",
              Speech.sentence(Speech.list(want.most().stream().map(this::most).toList())),
              Speech.count(sum)));
    } else {
      sentences.add(
          say(
              "However they are divided among %s, one stays over: all ways were tried.",
              Speech.list(
                  want.most().stream()
                      .map(one -> scene.person(one.priest()).tightName())
                      .toList())));
    }
    return sentences;
  }

  private String mass(MassId id) {
    DatedMass mass = masses.get(id);
    return say("%s at %s", Speech.clock(mass.start()), mass.church().name());
  }

  private String most(Want.Most most) {
    return say(
        "%s could take %s",
        scene.person(most.priest()).tightName(),
        most.masses() == 1 ? say("one of them") : Speech.count(most.masses()) + say(" of them"));
  }
}
