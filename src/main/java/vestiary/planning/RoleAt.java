package vestiary.planning;

import java.util.Optional;
import java.util.UUID;
import vestiary.people.Attendance;
import vestiary.people.PersonRole;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ServesAs;
import vestiary.vesting.Role;

/** In what capacity somebody who is named at a Mass is there. */
public final class RoleAt {

  private RoleAt() {}

  /** As what a lay minister serves; empty of whoever celebrates or assists. */
  public static Optional<ServesAs> serves(DatedMass mass, UUID person) {
    return mass.people().stream().anyMatch(one -> one.id().equals(person))
        ? Optional.empty()
        : mass.findServing(person);
  }

  /** As whom somebody vests; empty of those who serve in what they came in. */
  public static Optional<Role> findVests(DatedMass mass, UUID person) {
    Optional<ServesAs> serves = serves(mass, person);
    return serves.isEmpty()
        ? Optional.of(of(mass, person))
        : serves
            .filter(as -> as == ServesAs.READER)
            .map(as -> Role.READER)
            .or(serves.get()::findVests);
  }

  /** A word for it, for example "principal", "deacon" or "communion-minister". */
  public static String word(DatedMass mass, UUID person) {
    return serves(mass, person).map(ServesAs::id).orElseGet(() -> of(mass, person).id());
  }

  /** Whether he is the one without whom it cannot be, and not only with him or serving. */
  public static boolean leads(DatedMass mass, UUID person) {
    return mass.findCelebrant().filter(one -> one.id().equals(person)).isPresent();
  }

  /**
   * Whether somebody is away at any moment of a Mass: then he does nothing there, whatever he is
   * named for.
   */
  public static boolean isAway(DatedMass mass, UUID person, Attendance attendance) {
    return attendance.find(person, mass.start().toInstant(), mass.end().toInstant()).isPresent();
  }

  /**
   * Of those who celebrate or assist: whoever leads is principal celebrant, or minister where it is
   * no Mass.
   */
  public static Role of(DatedMass mass, UUID person) {
    if (leads(mass, person)) {
      return mass.kind().isMass() ? Role.PRINCIPAL : Role.MINISTER;
    }
    boolean isDeacon =
        mass.named().stream().anyMatch(p -> p.id().equals(person) && p.role() == PersonRole.DEACON);
    return isDeacon ? Role.DEACON : Role.CONCELEBRANT;
  }
}
