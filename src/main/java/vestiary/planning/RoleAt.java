package vestiary.planning;

import java.util.UUID;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Role;

/** In what capacity somebody who is named at a Mass vests there. */
public final class RoleAt {

  private RoleAt() {}

  /** Whoever leads is principal celebrant, or minister where it is no Mass. */
  public static Role of(DatedMass mass, UUID person) {
    if (mass.findCelebrant().filter(p -> p.id().equals(person)).isPresent()) {
      return mass.kind().isMass() ? Role.PRINCIPAL : Role.MINISTER;
    }
    boolean isDeacon =
        mass.named().stream().anyMatch(p -> p.id().equals(person) && p.role() == PersonRole.DEACON);
    return isDeacon ? Role.DEACON : Role.CONCELEBRANT;
  }
}
