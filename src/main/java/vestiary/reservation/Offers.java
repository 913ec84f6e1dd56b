package vestiary.reservation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import vestiary.planning.SpanToCheck;
import vestiary.schedule.DatedMass;
import vestiary.vesting.MassId;
import vestiary.vesting.Window;

/**
 * Everything in the cluster and whether it can be had for one Mass.
 *
 * @param window of the Mass, from set-out to clearance
 * @param all by code
 * @param holders who set aside what is set aside, by the reservation it is by
 */
record Offers(
    SpanToCheck span,
    DatedMass mass,
    Window window,
    List<Offer> all,
    Map<Holding, String> holders) {

  /** By which a reservation is found: what is held, and for which Mass. */
  record Holding(String code, MassId mass) {}

  Offers {
    all = List.copyOf(all);
    holders = Map.copyOf(holders);
  }

  /** That of a set or piece, by its code whatever its letter case. */
  Optional<Offer> find(String code, boolean set) {
    return all.stream()
        .filter(offer -> offer.thing().isSet() == set && offer.code().equalsIgnoreCase(code))
        .findFirst();
  }

  /** That of a set or piece which is known to be there. */
  Offer get(String code, boolean set) {
    return find(code, set).orElseThrow();
  }

  /** That of one piece, as if it belonged to no set. */
  Offer piece(String code) {
    return all.stream().flatMap(offer -> offer.alone(code).stream()).findFirst().orElseThrow();
  }

  /** What can be had instead: of the same kind and colour, the nearest first. */
  List<Offer> insteadOf(Reservable thing) {
    return all.stream()
        .filter(Offer::isFree)
        .filter(offer -> offer.thing().main().kind() == thing.main().kind())
        .filter(offer -> offer.thing().main().colours().contains(thing.main().colour()))
        .filter(offer -> !offer.code().equals(thing.code()))
        .sorted(Offer.NEAREST)
        .toList();
  }
}
