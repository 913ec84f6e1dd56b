package vestiary.allocation.celebrant;

import java.util.Objects;

/**
 * What a priest does in any case: a Mass that is not to be divided, one that he concelebrates,
 * another liturgy.
 *
 * @param day the one it counts on, or is driven on
 * @param counts whether the Eucharist is celebrated, so that it is one of his Masses that day
 * @param burden 1 if it is early or far, 2 if both, else 0
 */
public record Engagement(PriestId priest, Stay stay, CountedDay day, boolean counts, int burden) {

  public Engagement {
    Objects.requireNonNull(priest, "priest");
    Objects.requireNonNull(stay, "stay");
    Objects.requireNonNull(day, "day");
  }
}
