package vestiary.vesting;

import java.util.Objects;
import vestiary.calendar.MassKind;

/**
 * All that the norms of vesture ask about one Mass or other liturgy. It holds no celebration, no
 * names and no stock.
 */
public record VestedMass(
    MassId id,
    ChurchId church,
    MassKind kind,
    MassTime time,
    MassColour colour,
    Ministers ministers) {

  public VestedMass {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(church, "church");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(colour, "colour");
    Objects.requireNonNull(ministers, "ministers");
  }
}
