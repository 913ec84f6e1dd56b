package vestiary.schedule;

import static vestiary.web.Speech.say;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.vesting.Brings;
import vestiary.vesting.MassId;
import vestiary.vesting.Role;

/** One concelebrant or deacon more at a Mass, or one less. */
@ApplicationScoped
public class AddMinister {

  private final MassRows masses;
  private final TouchMass touch;

  AddMinister(MassRows masses, TouchMass touch) {
    this.touch = touch;
    this.masses = masses;
  }

  /**
   * Keeps the Mass as it is until the end of the present transaction, so that two who add somebody
   * do so one after the other.
   *
   * @throws Refused if there is no such Mass, or it is cancelled
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void lock(MassId mass) {
    touch.locked(mass);
  }

  /**
   * Adds one in the present transaction. A Mass that a pattern yielded is left alone by it from
   * then on.
   *
   * @param role concelebrant or deacon
   * @param bringsOwn whether he comes with everything that he wears
   * @throws Refused if there is no such Mass, it is cancelled, or nobody more can be entered
   */
  @Transactional(Transactional.TxType.MANDATORY)
  public void add(MassId mass, Role role, boolean bringsOwn) {
    MassRow row = touch.locked(mass);
    count(row, role, 1);
    if (bringsOwn) {
      List<BringsValue> brings = new ArrayList<>(row.brings);
      brings.add(own(role));
      row.brings = List.copyOf(brings);
    }
    masses.flush();
  }

  /** Takes one away in the present transaction; where nobody is left, nothing. */
  @Transactional(Transactional.TxType.MANDATORY)
  public void remove(MassId mass, Role role, boolean broughtOwn) {
    MassRow row = touch.locked(mass);
    count(row, role, -1);
    if (broughtOwn) {
      List<BringsValue> brings = new ArrayList<>(row.brings);
      brings.remove(own(role));
      row.brings = List.copyOf(brings);
    }
    masses.flush();
  }

  private static BringsValue own(Role role) {
    return BringsValue.from(new Brings(role, 1, Set.of()));
  }

  private static void count(MassRow row, Role role, int more) {
    row.touched = true;
    if (role == Role.CONCELEBRANT) {
      row.concelebrants = within(row.concelebrants + more);
    } else if (role == Role.DEACON) {
      row.deacons = within(row.deacons + more);
    } else {
      throw new IllegalArgumentException(role + " is not entered by number alone");
    }
  }

  private static int within(int count) {
    if (count > AskedMinisters.MOST) {
      throw new Refused(
          new Refusal.AgainstRule(
              "role", say("%d is the most that can be entered.", AskedMinisters.MOST)));
    }
    return Math.max(0, count);
  }
}
