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
    Ministers ministers,
    Occasion occasion) {

  public VestedMass {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(church, "church");
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(time, "time");
    Objects.requireNonNull(colour, "colour");
    Objects.requireNonNull(ministers, "ministers");
    Objects.requireNonNull(occasion, "occasion");
  }

  /** A Mass on a day for which no vestment suits better than another. */
  public VestedMass(
      MassId id,
      ChurchId church,
      MassKind kind,
      MassTime time,
      MassColour colour,
      Ministers ministers) {
    this(id, church, kind, time, colour, ministers, Occasion.WEEKDAY);
  }

  /** Whether its ministers vest as for Mass, as they do on Good Friday (Roman Missal). */
  boolean isVestedAsMass() {
    return kind.isMass() || kind == MassKind.GOOD_FRIDAY;
  }
}
