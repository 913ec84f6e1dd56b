package vestiary.allocation.flow;

import java.util.List;
import vestiary.vesting.Need;
import vestiary.vesting.Role;

/**
 * Needs of one Mass that ask the same for the same role, so that it makes no difference which of
 * them gets what.
 *
 * @param ask number of what they ask
 * @param needs in canonical order, one or more
 */
public record Group(int ask, Role role, boolean must, List<Need> needs) {

  public Group {
    needs = List.copyOf(needs);
  }

  int size() {
    return needs.size();
  }
}
