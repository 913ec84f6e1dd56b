package vestiary.vesting;

import java.util.List;
import java.util.Objects;

/**
 * Those of one role who vest besides celebrants and deacons: servers, acolytes, readers, others,
 * and at an ordination those who are ordained.
 *
 * @param role one of {@link Role#FURTHER}
 * @param count how many, 1 or more
 * @param sizes of their albs as the labels have them, in any order; not more than there are
 *     persons, and fewer where some are not known
 */
public record FurtherMinisters(Role role, int count, List<String> sizes) {

  public FurtherMinisters {
    Objects.requireNonNull(role, "role");
    sizes = List.copyOf(sizes);
    if (!Role.FURTHER.contains(role)) {
      throw new IllegalArgumentException(role + " is not entered by number");
    }
    if (count < 1 || sizes.size() > count) {
      throw new IllegalArgumentException(
          "1 or more with a size each at most, not " + count + " with " + sizes.size());
    }
  }
}
