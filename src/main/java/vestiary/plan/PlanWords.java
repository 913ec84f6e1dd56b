package vestiary.plan;

import static vestiary.web.Speech.say;
import static vestiary.web.Speech.word;

import java.util.ArrayList;
import java.util.List;
import vestiary.allocation.plan.Score;
import vestiary.web.Speech;

/** How good a plan is, in words. */
final class PlanWords {

  private PlanWords() {}

  static String status(PlanFound plan) {
    return switch (plan.state()) {
      case QUEUED -> say("Waiting to be worked out.");
      case RUNNING ->
          plan.cancelled() ? say("Ending with what is found.") : say("Being worked out.");
      case PROVEN ->
          plan.keeping()
              ? say("Proven: nothing better exists that leaves alone what no change has touched.")
              : say("Proven: nothing better exists.");
      case STOPPED ->
          plan.findProgress()
              .map(progress -> say("Best found so far; %s.", stillToGain(progress)))
              .orElse(say("Cancelled before anything was found."));
      case FAILED -> say("There is no plan. %s", say(plan.failure()));
    };
  }

  /** The first number of the score that is not shown to be the least. */
  private static String stillToGain(Progress progress) {
    Score score = progress.score();
    Score bounds = progress.bounds();
    if (!score.unmet().equals(bounds.unmet())) {
      return say("perhaps more needs could be met");
    }
    if (!score.steps().equals(bounds.steps())) {
      return say("perhaps fewer substitutes would do");
    }
    if (score.carriages() != bounds.carriages()) {
      return say(
          "at most %s could still be saved", carriages(score.carriages() - bounds.carriages()));
    }
    if (score.minutes() != bounds.minutes()) {
      return say(
          "at most %d minutes on the road could still be saved",
          score.minutes() - bounds.minutes());
    }
    return say(
        "who needs what is met with the fewest carriages, and only what people like better could still gain");
  }

  static List<String> score(PlanFound plan) {
    return plan.findProgress().map(progress -> score(progress.score(), plan)).orElse(List.of());
  }

  private static List<String> score(Score score, PlanFound plan) {
    List<String> said = new ArrayList<>();
    int unmet = score.unmet().stream().mapToInt(Long::intValue).sum();
    int steps = score.steps().stream().mapToInt(Long::intValue).sum();
    said.add(
        unmet == 0
            ? say("Every need is met.")
            : say(
                unmet == 1 ? word("%s is not met.") : word("%s are not met."),
                Speech.sentence(Speech.count(unmet, "need"))));
    if (steps > 0) {
      said.add(
          say("%s a lawful substitute is taken.", Speech.sentence(Speech.count(steps, "time"))));
    }
    int rides =
        (int) plan.result().trips().stream().filter(trip -> !trip.carrier().isEmpty()).count();
    said.add(
        score.carriages() == 0 && rides == 0
            ? say("Nothing is carried.")
            : Speech.sentence(carriages(score.carriages()))
                + (score.carriages() == 0 ? "" : say(", %d minutes on the road", score.minutes()))
                + (rides == 0
                    ? "."
                    : say(
                        "; %s with somebody who drives that way anyway.",
                        Speech.count(rides, "journey"))));
    return said;
  }

  private static String carriages(long number) {
    return Speech.count((int) number, "carriage");
  }
}
