package vestiary.assigning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import vestiary.allocation.celebrant.Beside;
import vestiary.allocation.celebrant.MassToServe;
import vestiary.allocation.celebrant.PriestId;

/** Why this priest and no other, in sentences. */
final class BesideWords {

  private final Scene scene;
  private final WhyNotWords whyNot;

  BesideWords(Scene scene, WhyNotWords whyNot) {
    this.scene = scene;
    this.whyNot = whyNot;
  }

  List<String> of(MassToServe mass, PriestId celebrant, List<Beside> others) {
    List<String> sentences = new ArrayList<>();
    if (mass.asked().contains(celebrant) && !mass.now().contains(celebrant)) {
      sentences.add(say("He was asked for, or usually says it, and he can."));
    }
    if (!others.isEmpty() && others.stream().allMatch(Beside.Cannot.class::isInstance)) {
      sentences.add(say("Nobody else can take it."));
    }
    others.forEach(other -> sentences.add(sentence(other, mass)));
    return sentences;
  }

  private String sentence(Beside other, MassToServe mass) {
    String name = scene.person(other.priest()).tightName();
    if (other instanceof Beside.Cannot cannot) {
      return "%s %s.".formatted(name, whyNot.of(cannot.why(), mass.id()));
    } else if (other instanceof Beside.Worse worse) {
      return say("%s could: %s.", name, more(worse));
    }
    return say("%s could as well.", name);
  }

  private static String more(Beside.Worse worse) {
    return switch (worse.level()) {
      case UNSERVED_FIRST, UNSERVED -> say("another Mass would then be without a priest");
      case BEYOND_ONE -> say("one priest would then celebrate more often that day than he need");
      case NOT_AS_ASKED -> say("somebody else was asked for, or usually says it");
      case OTHER_TONGUE -> say("he does not celebrate in its language");
      case MINUTES -> say("priests would drive %d minutes more", worse.more());
      case WORST_SHARE, SQUARES -> say("early and far Masses would be shared less fairly");
      case CHANGES -> say("somebody else would have to be told anew");
    };
  }
}
