package vestiary.reservation;

import static vestiary.web.Speech.say;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import vestiary.access.Action;
import vestiary.access.CurrentVisitor;
import vestiary.pool.KeepHeld;
import vestiary.pool.NoteConsent;
import vestiary.problem.Asked;
import vestiary.problem.Refusal;
import vestiary.problem.Refused;
import vestiary.schedule.DatedMass;
import vestiary.schedule.ReadMasses;

/**
 * Yes or no of whoever keeps what is asked for. A yes gives it up where it was held, notes the
 * owner's leave where that is needed, and sets it aside for whoever asked, all in one transaction.
 */
@ApplicationScoped
class AnswerWish {

  private static final int LONGEST = 1_000;
  private static final int WHATEVER = -1;

  private final WishRows wishes;
  private final ReservationRows reservations;
  private final ReadMasses masses;
  private final ReadOffers offers;
  private final ReserveSets reserve;
  private final KeepHeld held;
  private final NoteConsent consents;
  private final WishMail mail;
  private final CurrentVisitor visitor;
  private final Clock clock;

  AnswerWish(
      WishRows wishes,
      ReservationRows reservations,
      ReadMasses masses,
      ReadOffers offers,
      ReserveSets reserve,
      KeepHeld held,
      NoteConsent consents,
      WishMail mail,
      CurrentVisitor visitor,
      Clock clock) {
    this.wishes = wishes;
    this.reservations = reservations;
    this.masses = masses;
    this.offers = offers;
    this.reserve = reserve;
    this.held = held;
    this.consents = consents;
    this.mail = mail;
    this.visitor = visitor;
    this.clock = clock;
  }

  /**
   * Answers.
   *
   * @param word to whoever asked; may be empty
   * @throws Refused if it is answered already, is not the visitor's to answer, or cannot be had for
   *     that Mass even so
   */
  void answer(String id, boolean yes, String word) {
    QuarkusTransaction.joiningExisting().run(() -> mail.answered(keep(id, yes, word)));
  }

  private UUID keep(String id, boolean yes, String word) {
    WishRow row = wishes.getLocked(id);
    visitor.refuseOutsideOwn(Action.SET_ASIDE, row.keeperId);
    if (row.toState() != WishState.OPEN) {
      throw new Refused(
          new Refusal.Taken(
              "", say("This was answered or taken back meanwhile. Nothing was changed.")));
    }
    Asked asked = new Asked();
    row.answer = asked.text("answer", word, LONGEST);
    asked.refuseIfFaulty();
    String code = held.codes().get(row.thing());
    KeepHeld.Named named = row.setId == null ? held.piece(code) : held.set(code);
    held.lock(named.pieces());
    DatedMass mass = masses.get(row.massId.toString());
    Offers found = offers.of(mass);
    Offer offer = row.setId == null ? found.piece(named.code()) : found.get(named.code(), true);
    noteOwner(offer, mass, yes);
    if (yes) {
      giveUp(offer, mass);
      reserve.keepFor(mass, row.setId != null, named, row.askedBy);
    }
    row.state = (yes ? WishState.GRANTED : WishState.REFUSED).id();
    row.answeredBy = visitor.visitor().mark();
    row.answeredAt = clock.instant();
    wishes.flush();
    return row.id;
  }

  /** The owner's leave for this Mass is kept where all such leaves are. */
  private void noteOwner(Offer offer, DatedMass mass, boolean yes) {
    List<String> onAsking =
        offer.each().stream()
            .flatMap(
                one ->
                    one instanceof Availability.OnAsking asking
                        ? Stream.of(asking.piece())
                        : one instanceof Availability.OwnerSaidNo no
                            ? Stream.of(no.piece())
                            : Stream.empty())
            .toList();
    if (!onAsking.isEmpty()) {
      consents.note(new NoteConsent.Answer(mass.id(), onAsking, yes, "", WHATEVER));
    }
  }

  private void giveUp(Offer offer, DatedMass mass) {
    offer.each().stream()
        .filter(Availability.Held.class::isInstance)
        .map(one -> ((Availability.Held) one).by())
        .flatMap(by -> reservations.standingFor(by.masses()).stream())
        .filter(row -> row.toState() == ReservationState.HELD)
        .filter(row -> !row.massId.equals(mass.id().value()))
        .filter(row -> isOf(row, offer))
        .distinct()
        .forEach(
            row -> {
              row.state = ReservationState.RELEASED.id();
              held.release(row.id);
            });
    reservations.flush();
  }

  private boolean isOf(ReservationRow row, Offer offer) {
    return held.of(row.id).stream()
        .anyMatch(
            part ->
                offer.thing().pieces().stream()
                    .anyMatch(piece -> piece.code().equals(part.piece())));
  }
}
