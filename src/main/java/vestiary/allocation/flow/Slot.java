package vestiary.allocation.flow;

import java.util.List;
import vestiary.vesting.MassId;

/**
 * One Mass as the pool sees it.
 *
 * @param groups its needs, in canonical order of the first of each
 */
public record Slot(MassId mass, Visit visit, List<Group> groups) {

  public Slot {
    groups = List.copyOf(groups);
  }
}
