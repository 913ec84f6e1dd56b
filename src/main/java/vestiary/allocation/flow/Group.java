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
 * @param mate place of the group of what the same wearers wear with it, a stole or what goes over
 *     it, in the same order of wearers; -1 if there is none
 */
public record Group(int ask, Role role, boolean must, List<Need> needs, int mate) {

  public Group {
    needs = List.copyOf(needs);
  }

  /** Whether the same wearers ask for more that makes one set with this. */
  public boolean hasMate() {
    return mate >= 0;
  }

  int size() {
    return needs.size();
  }
}
