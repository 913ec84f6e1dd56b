package vestiary.reservation;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import vestiary.pool.KeepHeld;
import vestiary.problem.RaceLost;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/**
 * Tells those who wait for something that it has become free, by whatever way: given up, brought
 * back, out of care. Of several who wait for one thing the first who asked is told, a day later the
 * next if it is still there, and nobody twice.
 */
@ApplicationScoped
class TellWaiting {

  /** So long the first who asked has the choice alone; common practice, no source. */
  private static final Duration FIRST_CHOICE = Duration.ofDays(1);

  private final WishRows wishes;
  private final ReadMasses masses;
  private final ReadOffers offers;
  private final KeepHeld held;
  private final WishMail mail;
  private final Clock clock;

  TellWaiting(
      WishRows wishes,
      ReadMasses masses,
      ReadOffers offers,
      KeepHeld held,
      WishMail mail,
      Clock clock) {
    this.wishes = wishes;
    this.masses = masses;
    this.offers = offers;
    this.held = held;
    this.mail = mail;
    this.clock = clock;
  }

  /**
   * Looks what has become free, notes whom that is told, and writes to them. Where somebody else is
   * at it, nothing is done: the next look tells the rest.
   */
  void look() {
    try {
      QuarkusTransaction.joiningExisting().run(() -> note().forEach(mail::free));
    } catch (RuntimeException failure) {
      if (!RaceLost.isBehind(failure)) {
        throw failure;
      }
    }
  }

  private List<UUID> note() {
    Instant now = clock.instant();
    Set<UUID> toldOf = wishes.toldSince(now.minus(FIRST_CHOICE));
    List<UUID> told = new ArrayList<>();
    for (WishRow row : wishes.waitingLocked()) {
      if (!toldOf.contains(row.thing()) && isFree(row, now)) {
        row.toldAt = now;
        toldOf.add(row.thing());
        told.add(row.id);
      }
    }
    wishes.flush();
    return told;
  }

  private boolean isFree(WishRow row, Instant now) {
    DatedMass mass = masses.get(row.massId.toString());
    if (mass.chosen().cancelled() || !mass.start().toInstant().isAfter(now)) {
      return false;
    }
    String code = held.codes().get(row.thing());
    Offers found = offers.of(mass);
    Offer offer = row.setId == null ? found.piece(code) : found.get(code, true);
    return offer.isFree();
  }
}
