package vestiary.reservation;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.KeepHeld;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;
import vestiary.vesting.ChurchId;

/** Asks for what cannot simply be had, and takes that back. */
@ApplicationScoped
class AskForSet {

  private static final int LONGEST = 1_000;

  private final ReadMasses masses;
  private final ReadOffers offers;
  private final KeepHeld held;
  private final WishRows wishes;
  private final WishMail mail;
  private final CurrentVisitor visitor;
  private final Clock clock;

  AskForSet(
      ReadMasses masses,
      ReadOffers offers,
      KeepHeld held,
      WishRows wishes,
      WishMail mail,
      CurrentVisitor visitor,
      Clock clock) {
    this.masses = masses;
    this.offers = offers;
    this.held = held;
    this.wishes = wishes;
    this.mail = mail;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * What is asked.
   *
   * @param code of a set, or of a piece
   * @param note to whoever answers; may be empty
   */
  record Request(String mass, boolean isSet, String code, String note) {}

  /**
   * Asks whoever keeps it, by mail too where that is set up.
   *
   * @throws Refused if it is free, can never be had, is asked for already, or the Mass is over or
   *     in none of the visitor's churches
   */
  UUID ask(Request request) {
    return QuarkusTransaction.joiningExisting()
        .call(
            () -> {
              UUID id = keep(request);
              mail.asked(id);
              return id;
            });
  }

  /**
   * Takes it back.
   *
   * @throws Refused if it is answered, or of none of the visitor's churches
   */
  @Transactional
  void withdraw(String id) {
    WishRow row = wishes.getLocked(id);
    visitor.refuseOutsideOwn(Action.SET_ASIDE, row.churchId);
    if (!row.toState().waits()) {
      throw new Refused(
          new Refusal.Taken(
              "", say("This is answered or taken back already. Nothing was changed.")));
    }
    row.state = WishState.WITHDRAWN.id();
    wishes.flush();
  }

  private UUID keep(Request request) {
    Asked asked = new Asked();
    String note = asked.text("note", request.note(), LONGEST);
    String code = asked.needed("set", request.code(), LONGEST);
    asked.refuseIfFaulty();
    DatedMass mass = masses.get(request.mass());
    visitor.refuseOutsideOwn(Action.SET_ASIDE, mass.church().id().value());
    if (!mass.end().toInstant().isAfter(clock.instant())) {
      throw new Refused(
          new Refusal.AgainstRule("mass", say("This Mass is over; nothing was asked.")));
    }
    KeepHeld.Named named = request.isSet() ? held.set(code) : held.piece(code);
    Offers found = offers.of(mass);
    Offer offer = request.isSet() ? found.get(named.code(), true) : found.piece(named.code());
    refuseUnlessAskable(offer);
    WishRow row = new WishRow();
    row.massId = mass.id().value();
    row.churchId = mass.church().id().value();
    row.setId = request.isSet() ? named.id() : null;
    row.pieceId = request.isSet() ? null : named.id();
    row.keeperId = keeper(offer).value();
    row.note = note;
    row.askedBy = visitor.visitor().mark();
    row.askedAt = clock.instant();
    wishes.persistAndFlush(row);
    return row.id;
  }

  private static void refuseUnlessAskable(Offer offer) {
    if (offer.isFree()) {
      throw new Refused(
          new Refusal.Taken(
              "set",
              say("%s is free: set it aside at once instead of asking for it.", offer.code())));
    }
    if (!isAskable(offer)) {
      throw new Refused(
          new Refusal.Taken(
              "set", say("%s is not to be had for this Mass whoever is asked.", offer.code())));
    }
  }

  /** Whether a word of somebody, or time, could change what keeps it. */
  static boolean isAskable(Offer offer) {
    return offer
        .findKept()
        .filter(kept -> !(kept instanceof Availability.StaysHome))
        .filter(kept -> !(kept instanceof Availability.OwnerNever))
        .filter(kept -> !(kept instanceof Availability.NoJourney))
        .isPresent();
  }

  /** Where it is held; else where it is at home. */
  private static ChurchId keeper(Offer offer) {
    if (offer.findKept().orElseThrow() instanceof Availability.Held one) {
      return one.by().churches().stream().findFirst().orElse(offer.thing().main().home());
    }
    return offer.thing().main().home();
  }
}
