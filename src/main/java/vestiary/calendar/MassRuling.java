package vestiary.calendar;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the norms say about one Mass.
 *
 * @param day the day the Mass belongs to, the next one for an anticipated Mass
 * @param options never empty; the first is taken unless another is chosen
 */
public record MassRuling(Day day, MassKind kind, List<MassOption> options, Permission permission) {

  public MassRuling {
    Objects.requireNonNull(day);
    Objects.requireNonNull(kind);
    options = List.copyOf(options);
    if (options.isEmpty()) throw new IllegalArgumentException("A ruling needs an option.");
    Objects.requireNonNull(permission);
  }

  /** The option with this celebration, if it is one. */
  public Optional<MassOption> find(String celebrationId) {
    return options.stream().filter(o -> o.celebration().id().equals(celebrationId)).findFirst();
  }
}
