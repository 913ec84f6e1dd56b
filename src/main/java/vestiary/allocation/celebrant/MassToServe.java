package vestiary.allocation.celebrant;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import vestiary.vesting.MassId;

/**
 * A Mass for which a celebrant is looked for.
 *
 * @param day the one it counts on
 * @param occasion for what people come to it
 * @param early whether it is one of those for which one rises early
 * @param language tag of the language of its community; empty if none is said
 * @param asked who was asked for, or usually celebrates it; empty if nobody, else one
 * @param now who is named for it now; empty if nobody, else one
 */
public record MassToServe(
    Stay stay,
    CountedDay day,
    Occasion occasion,
    boolean early,
    String language,
    List<PriestId> asked,
    List<PriestId> now) {

  static final Comparator<MassToServe> BY_START =
      Comparator.comparing((MassToServe mass) -> mass.stay().start())
          .thenComparing(MassToServe::id);

  public MassToServe {
    Objects.requireNonNull(stay, "stay");
    Objects.requireNonNull(day, "day");
    Objects.requireNonNull(occasion, "occasion");
    Objects.requireNonNull(language, "language");
    asked = List.copyOf(asked);
    now = List.copyOf(now);
  }

  public MassId id() {
    return stay.mass();
  }
}
