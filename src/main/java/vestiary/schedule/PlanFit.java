package vestiary.schedule;

import java.time.LocalDate;
import java.util.List;

/**
 * Whether the plan that holds still fits, for pages of Masses and weeks. The schedule knows no
 * plans; whoever does answers.
 */
public interface PlanFit {

  /**
   * Plans of these dates, both included, that something has changed for since they were applied; by
   * first date, empty if all fit.
   */
  List<Unfit> within(LocalDate first, LocalDate last);

  /**
   * A plan that does not fit any more, or that could be better now.
   *
   * @param sentences what has changed, then what that means for the plan
   * @param from first date to plan anew, ISO 8601
   * @param to last date, included
   */
  record Unfit(List<String> sentences, String from, String to) {
    public Unfit {
      sentences = List.copyOf(sentences);
    }
  }
}
