package vestiary.schedule;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import vestiary.vesting.Brings;
import vestiary.vesting.MassId;

/**
 * What of a Mass a remedy may change.
 *
 * @param brings who brings what
 * @param colour the one that is chosen; empty if it follows from the calendar
 */
public record MassState(MassId mass, Instant start, List<BringsValue> brings, String colour) {

  public MassState {
    brings = List.copyOf(brings);
  }

  /** As it is now. */
  public static MassState of(DatedMass mass) {
    return new MassState(
        mass.id(),
        mass.start().toInstant(),
        mass.brings().stream().map(BringsValue::from).toList(),
        mass.chosen().colour());
  }

  /** With another start. */
  public MassState at(Instant other) {
    return new MassState(mass, other, brings, colour);
  }

  /** With another colour, chosen. */
  public MassState in(String other) {
    return new MassState(mass, start, brings, other);
  }

  /** With somebody more who brings his own. */
  public MassState with(Brings more) {
    List<BringsValue> all = new ArrayList<>(brings);
    all.add(BringsValue.from(more));
    return new MassState(mass, start, all, colour);
  }
}
