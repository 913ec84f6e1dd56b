package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import vestiary.schedule.DatedMass;
import vestiary.schedule.MassToBe;
import vestiary.schedule.ReadMasses;
import vestiary.web.Entries;

/** What can be had for the Mass that a form means, which is in the schedule or to be entered. */
@ApplicationScoped
class ForMass {

  private final ReadMasses masses;
  private final MassToBe toBe;
  private final ReadOffers offers;

  ForMass(ReadMasses masses, MassToBe toBe, ReadOffers offers) {
    this.masses = masses;
    this.toBe = toBe;
    this.offers = offers;
  }

  /** Whether the form says which Mass at all. */
  static boolean isSaid(Entries typed) {
    return isScheduled(typed) || !typed.text("date").isBlank();
  }

  /** Whether it is one that is in the schedule. */
  static boolean isScheduled(Entries typed) {
    return !typed.text("mass").isBlank();
  }

  /**
   * Looks through the cluster.
   *
   * @throws vestiary.problem.Refused if there is no such Mass, or it cannot be entered so
   */
  @Transactional
  Offers offers(Entries typed) {
    DatedMass mass =
        isScheduled(typed) ? masses.get(typed.text("mass")) : toBe.of(ToBeForm.request(typed));
    return offers.of(mass);
  }
}
