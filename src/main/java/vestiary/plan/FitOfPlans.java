package vestiary.plan;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import vestiary.planning.CheckClashes;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.PlanFit;

/** Compares what the plans that hold were made from with what there is now. */
@ApplicationScoped
class FitOfPlans implements PlanFit {

  private final ReadPlan plans;
  private final AskPlanner question;
  private final CheckClashes check;

  FitOfPlans(ReadPlan plans, AskPlanner question, CheckClashes check) {
    this.plans = plans;
    this.question = question;
    this.check = check;
  }

  @Override
  public List<Unfit> within(LocalDate first, LocalDate last) {
    return plans.standing(first, last).stream()
        .flatMap(plan -> find(plan, check.load(plan.first(), plan.last())).stream())
        .sorted(Comparator.comparing(Unfit::from))
        .toList();
  }

  /** Empty if the plan still fits, or if it cannot be told what it was made from. */
  Optional<Unfit> find(PlanFound plan, SpanToCheck span) {
    return question
        .findBefore(plan.id())
        .map(before -> SinceThen.sentences(span, plan.result(), before, question.of(span)))
        .filter(sentences -> !sentences.isEmpty())
        .map(sentences -> new Unfit(sentences, plan.first().toString(), plan.last().toString()));
  }
}
