package vestiary.vesting;

import java.util.Objects;

/**
 * One vested person at one Mass, by role and number.
 *
 * @param ordinal 1 or more, counted within the role
 */
public record Wearer(MassId mass, Role role, int ordinal) {

  public Wearer {
    Objects.requireNonNull(mass, "mass");
    Objects.requireNonNull(role, "role");
    if (ordinal < 1) {
      throw new IllegalArgumentException("Persons are counted from 1, not " + ordinal);
    }
  }
}
