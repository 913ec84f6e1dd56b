package vestiary.allocation.flow;

import java.util.List;

/** What a plan is measured by, the weightiest first. */
public enum Measure {
  UNMET_PRINCIPALS,
  UNMET_MUSTS,
  UNMET_OTHERS,
  /** Persons with a third substitute or one further down, then a second, then a first. */
  THIRD_STEPS,
  SECOND_STEPS,
  FIRST_STEPS,
  /** Sets whose pieces go their own ways. */
  PARTED,
  CARRIAGES,
  /** Driven on carriages. */
  MINUTES,
  PREFERENCES,
  CHANGES;

  private static final Measure[] ALL = values();

  /** Those that need no journeys to be counted. */
  public static List<Measure> coverage() {
    return List.of(ALL).subList(0, PARTED.ordinal());
  }

  /** How many there are. */
  static final int NUMBER = ALL.length;

  /** The step so far down the ladder, 1 or more. */
  static Measure step(int depth) {
    return depth == 1 ? FIRST_STEPS : depth == 2 ? SECOND_STEPS : THIRD_STEPS;
  }
}
