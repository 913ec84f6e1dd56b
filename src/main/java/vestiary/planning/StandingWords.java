package vestiary.planning;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import vestiary.web.Speech;
import vestiary.web.Standing;

/** Says first how things stand. */
public final class StandingWords {

  private StandingWords() {}

  /** The sentence, then the clashes counted by severity, or that there is none. */
  public static Standing of(String sentence, List<Clash> clashes) {
    List<Standing.Count> counts = new ArrayList<>();
    for (ClashSeverity severity : ClashSeverity.values()) {
      int number = (int) clashes.stream().filter(c -> c.severity() == severity).count();
      if (number > 0) {
        String words = severity.counted(number);
        counts.add(
            new Standing.Count(severity.mark(), counts.isEmpty() ? Speech.sentence(words) : words));
      }
    }
    return new Standing(
        counts.isEmpty() ? sentence + say(" Nothing stands in the way.") : sentence, counts);
  }
}
