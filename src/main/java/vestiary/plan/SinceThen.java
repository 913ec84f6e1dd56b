package vestiary.plan;

import static vestiary.web.Speech.say;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import vestiary.allocation.plan.Situation;
import vestiary.planning.SpanToCheck;
import vestiary.web.Speech;

/** What has changed since a plan was made, in words. */
final class SinceThen {

  private static final int MOST_SAID = 3;

  private SinceThen() {}

  /**
   * What has changed, and whether the plan no longer fits or could only be better; empty if nothing
   * has. Roads and settings are told where nothing else is: whoever celebrates elsewhere drives
   * elsewhere, too.
   *
   * @param span the plan's dates as they are now
   * @param before what the plan was made from
   * @param now the planner's question as it is now
   */
  static List<String> sentences(
      SpanToCheck span, PlanResult result, Situation before, Situation now) {
    SinceWords words = new SinceWords(span, now);
    Set<String> worn =
        result.worn().stream().map(PlanResult.Worn::piece).collect(Collectors.toSet());
    List<SinceWords.Told> told = new ArrayList<>(new MassesSince(span, before, now, words).told());
    told.addAll(new PiecesSince(span, worn, before, now, words).told());
    return inShort(told.isEmpty() ? new RoadsSince(before, now, words).told() : told);
  }

  private static List<String> inShort(List<SinceWords.Told> told) {
    if (told.isEmpty()) {
      return List.of();
    }
    int shown = told.size() > MOST_SAID ? MOST_SAID - 1 : told.size();
    List<String> sentences = new ArrayList<>();
    told.subList(0, shown).forEach(one -> sentences.add(one.sentence()));
    if (shown < told.size()) {
      sentences.add(say("%s more.", Speech.sentence(Speech.count(told.size() - shown, "change"))));
    }
    sentences.add(
        told.stream().anyMatch(SinceWords.Told::breaks)
            ? say("The plan that holds no longer fits.")
            : say("The plan that holds still fits; perhaps a better one can be had."));
    return sentences;
  }
}
