package vestiary.planning;

import java.util.Map;
import vestiary.vesting.Role;

/** Those who vest, in the words of pages. */
public final class RoleWords {

  /** There is but one of each at a Mass. */
  private static final Map<Role, String> THE_ONE =
      Map.of(Role.PRINCIPAL, "celebrant", Role.MINISTER, "minister", Role.DECEASED, "coffin");

  private static final Map<Role, String> MANY =
      Map.of(
          Role.NEW_PRIEST, "newly ordained priest",
          Role.NEW_DEACON, "newly ordained deacon",
          Role.OTHER, "other minister");

  private RoleWords() {}

  /** One of them, for example "server" or "newly ordained priest". */
  public static String noun(Role role) {
    return THE_ONE.getOrDefault(role, MANY.getOrDefault(role, role.id()));
  }

  /** Whether there is but one at a Mass, so that people say "the celebrant". */
  public static boolean isTheOne(Role role) {
    return THE_ONE.containsKey(role);
  }
}
