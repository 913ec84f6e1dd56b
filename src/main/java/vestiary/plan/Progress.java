package vestiary.plan;

import vestiary.allocation.plan.Score;

/**
 * How good the best plan so far is, and how good a plan can be at best.
 *
 * @param bounds each number's, those before it being what they are
 */
public record Progress(Score score, Score bounds) {}
