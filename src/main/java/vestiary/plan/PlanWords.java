package vestiary.plan;

import java.util.ArrayList;
import java.util.List;
import vestiary.allocation.plan.Score;
import vestiary.web.English;

/** How good a plan is, in words. */
final class PlanWords {

  private PlanWords() {}

  static String status(PlanFound plan) {
    return switch (plan.state()) {
      case QUEUED -> "Waiting to be worked out.";
      case RUNNING -> plan.cancelled() ? "Ending with what is found." : "Being worked out.";
      case PROVEN ->
          plan.keeping()
              ? "Proven: nothing better exists that leaves alone what no change has touched."
              : "Proven: nothing better exists.";
      case STOPPED ->
          plan.findProgress()
              .map(progress -> "Best found so far; " + stillToGain(progress) + ".")
              .orElse("Cancelled before anything was found.");
      case FAILED -> "There is no plan. " + plan.failure();
    };
  }

  /** The first number of the score that is not shown to be the least. */
  private static String stillToGain(Progress progress) {
    Score score = progress.score();
    Score bounds = progress.bounds();
    if (!score.unmet().equals(bounds.unmet())) {
      return "perhaps more needs could be met";
    }
    if (!score.steps().equals(bounds.steps())) {
      return "perhaps fewer substitutes would do";
    }
    if (score.carriages() != bounds.carriages()) {
      return "at most %s could still be saved"
          .formatted(carriages(score.carriages() - bounds.carriages()));
    }
    if (score.minutes() != bounds.minutes()) {
      return "at most %d minutes on the road could still be saved"
          .formatted(score.minutes() - bounds.minutes());
    }
    return "who needs what is met with the fewest carriages, and only what people like better could still gain";
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
            ? "Every need is met."
            : English.sentence(English.count(unmet, "need"))
                + (unmet == 1 ? " is not met." : " are not met."));
    if (steps > 0) {
      said.add(English.sentence(English.count(steps, "time")) + " a lawful substitute is taken.");
    }
    int rides =
        (int) plan.result().trips().stream().filter(trip -> !trip.carrier().isEmpty()).count();
    said.add(
        score.carriages() == 0 && rides == 0
            ? "Nothing is carried."
            : English.sentence(carriages(score.carriages()))
                + (score.carriages() == 0
                    ? ""
                    : ", %d minutes on the road".formatted(score.minutes()))
                + (rides == 0
                    ? "."
                    : "; %s with somebody who drives that way anyway."
                        .formatted(English.count(rides, "journey"))));
    return said;
  }

  private static String carriages(long number) {
    return English.count((int) number, "carriage");
  }
}
