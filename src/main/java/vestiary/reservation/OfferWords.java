package vestiary.reservation;

import static vestiary.web.Speech.say;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.cluster.Church;
import vestiary.pool.Care;
import vestiary.pool.PlannedWear;
import vestiary.pool.PooledPiece;
import vestiary.pool.SetAside;
import vestiary.reservation.ReservationWords.Times;
import vestiary.schedule.DatedMass;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.web.Speech;

/** Why a set can be had or not, in the words of pages and answers; without a full stop. */
final class OfferWords {

  private final Offers offers;
  private final Times times;
  private final Map<ChurchId, String> churches;
  private final Map<MassId, DatedMass> masses;
  private final Map<String, PooledPiece> pieces;

  OfferWords(Offers offers) {
    this.offers = offers;
    this.times = new Times(offers.span().cluster().zone());
    this.churches =
        offers.span().churches().stream().collect(Collectors.toMap(Church::id, Church::name));
    this.masses =
        offers.span().masses().stream()
            .collect(Collectors.toMap(DatedMass::id, Function.identity()));
    this.pieces =
        offers.span().pieces().stream()
            .collect(Collectors.toMap(PooledPiece::code, Function.identity()));
  }

  /** For example "lies at Holy Trinity, 12 minutes away". */
  String lies(Offer offer) {
    return offer
        .main()
        .findFirst()
        .map(
            free ->
                free.lies().equals(offers.mass().church().id())
                    ? say("lies here")
                    : say("lies at %s, %s", church(free.lies()), away(free.way())))
        .orElse("");
  }

  /** What plans lose, for example "planned for Mass at Saint Anne, 18:30, which loses it". */
  String takes(Offer offer) {
    List<String> from =
        offer.losing().stream()
            .map(PlannedWear::wearer)
            .map(wearer -> shortly(wearer.mass()))
            .distinct()
            .toList();
    return from.isEmpty()
        ? ""
        : say(
            "planned for %s, which loses %s",
            Speech.list(from), offer.thing().isSet() ? say("the set") : say("it"));
  }

  /** Why it cannot be had; empty if it can. */
  String why(Offer offer) {
    return offer.findKept().map(kept -> why(offer, kept)).orElse("");
  }

  private String why(Offer offer, Availability.Kept kept) {
    String reason = kept.why(this);
    return offer.thing().isSet() && offer.thing().pieces().size() > 1 && isOfPieceAlone(offer)
        ? say("%s of it %s", kept.piece(), reason)
        : reason;
  }

  /** Whether other pieces of the set are free, so that the one must be named. */
  private static boolean isOfPieceAlone(Offer offer) {
    return !offer.free().isEmpty();
  }

  String wantedNext(Availability.WantedNext one) {
    return say(
        "is wanted at %s by %s, %s",
        church(one.next()), times.at(one.by(), day()), away(one.way()));
  }

  /** Who has it, for what and until when. */
  String held(SetAside by) {
    String who = findHolder(by).map(name -> say(" by %s", name)).orElse("");
    String what =
        by.masses().stream().findFirst().map(mass -> say(" for %s", shortly(mass))).orElse("");
    boolean out = by.word().equals(ReservationState.OUT.id());
    String until =
        by.until().equals(Instant.MAX)
            ? say(", and not back")
            : say(", until %s", times.at(by.until(), day()));
    return say("is %s%s%s%s", out ? say("out") : say("held"), who, what, until);
  }

  /** Who set it aside, by itself or with its set; empty if nobody is known. */
  Optional<String> findHolder(SetAside by) {
    return by.masses().stream()
        .findFirst()
        .flatMap(
            mass ->
                Stream.of(by.piece(), pieces.get(by.piece()).set())
                    .map(code -> offers.holders().get(new Offers.Holding(code, mass)))
                    .filter(Objects::nonNull)
                    .findFirst());
  }

  /** A day that care takes whole is named by itself, the last one included. */
  String care(Care care) {
    return say(
        "is in care %s: %s",
        care.findEnd().map(end -> times.last(end, day())).orElse(say("until further notice")),
        care.reason());
  }

  String late(Availability.TooLate one) {
    return one.since().stream()
        .findFirst()
        .map(
            since ->
                say(
                    "comes too late: it is at %s until %s, %s",
                    church(one.lies()), times.at(since, day()), away(one.way())))
        .orElseGet(
            () -> say("comes too late: it lies at %s, %s", church(one.lies()), away(one.way())));
  }

  /** For example "Mass at Saint Anne, 18:30"; with its day if that is another. */
  String shortly(MassId id) {
    DatedMass mass = masses.get(id);
    return mass == null
        ? say("a Mass that is no longer in the schedule")
        : say(
            "%s at %s, %s",
            mass.kind().isMass() ? say("Mass") : say("the liturgy"),
            mass.church().name(),
            times.at(mass.start().toInstant(), day()));
  }

  private LocalDate day() {
    return offers.mass().date();
  }

  String church(ChurchId id) {
    return churches.get(id);
  }

  /** For example "12 minutes away". */
  static String away(Duration way) {
    long minutes = (way.toSeconds() + 59) / 60;
    return minutes == 1 ? say("a minute away") : say("%d minutes away", minutes);
  }
}
