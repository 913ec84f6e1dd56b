package vestiary.calendar;

import java.time.LocalTime;
import java.util.Objects;

/**
 * What a diocese or a cluster has settled about evening Masses, where law leaves it open or
 * practice differs.
 *
 * @param rule what decides between two great days
 * @param open which Mass is taken where nothing decides
 * @param from the hour, local to the church, from which a Mass is of the evening. Canon 1248 says
 *     "evening" alone; 16:00 is the usual reading: common practice, no source
 */
public record Evenings(EveningRule rule, OpenEvening open, LocalTime from) {

  /** What a new cluster begins with. */
  public static final Evenings USUAL =
      new Evenings(EveningRule.PRECEPT, OpenEvening.SOLEMNITY, LocalTime.of(16, 0));

  public Evenings {
    Objects.requireNonNull(rule);
    Objects.requireNonNull(open);
    Objects.requireNonNull(from);
  }

  /** Whether a Mass that begins then is an evening Mass. */
  boolean isEvening(LocalTime start) {
    return !start.isBefore(from);
  }
}
