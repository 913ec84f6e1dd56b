package vestiary.reservation;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import vestiary.allocation.Shortage;
import vestiary.planning.CheckClashes;
import vestiary.planning.Clash;
import vestiary.planning.ClashSeverity;
import vestiary.planning.SpanToCheck;
import vestiary.pool.PlannedWear;
import vestiary.pool.SetAside;
import vestiary.pool.Taken;

/**
 * What a hold takes from others, known before it is made: the same check of the day with it and
 * without it.
 */
@ApplicationScoped
class HoldEffects {

  private final CheckClashes check;

  HoldEffects(CheckClashes check) {
    this.check = check;
  }

  /** What is short with it and was not, or not so much, without; and what it mends. */
  record Effects(List<Clash> arising, List<Clash> mended) {
    Effects {
      arising = List.copyOf(arising);
      mended = List.copyOf(mended);
    }
  }

  /**
   * Reads no row.
   *
   * @param chosen all free
   */
  Effects of(Offers offers, List<Offer> chosen) {
    SpanToCheck span = offers.span();
    List<Clash> without = grave(check.in(span));
    List<Clash> with = grave(check.in(after(offers, chosen)));
    return new Effects(more(with, without), more(without, with));
  }

  private static SpanToCheck after(Offers offers, List<Offer> chosen) {
    SpanToCheck span = offers.span();
    Set<PlannedWear> displaced =
        chosen.stream().flatMap(offer -> offer.displaced().stream()).collect(Collectors.toSet());
    List<SetAside> aside = new ArrayList<>(span.taken().setAside());
    chosen.stream().flatMap(offer -> held(offers, offer)).forEach(aside::add);
    List<PlannedWear> planned =
        span.taken().planned().stream().filter(one -> !displaced.contains(one)).toList();
    return span.with(span.masses(), new Taken(planned, aside), span.accepted());
  }

  private static Stream<SetAside> held(Offers offers, Offer offer) {
    return offer.free().stream()
        .map(
            one ->
                new SetAside(
                    one.piece(),
                    List.of(offers.mass().church().id()),
                    List.of(offers.mass().id()),
                    one.from(),
                    one.until(),
                    ReservationState.HELD.id()));
  }

  private static List<Clash> grave(List<Clash> clashes) {
    return clashes.stream().filter(one -> one.severity() != ClashSeverity.KNOW).toList();
  }

  /** Those of the one that the other has not, or in which it misses less. */
  private static List<Clash> more(List<Clash> one, List<Clash> other) {
    Map<String, Integer> missing = new HashMap<>();
    Set<String> known = new HashSet<>();
    for (Clash clash : other) {
      known.add(clash.id());
      missing.put(clash.id(), missing(clash));
    }
    return one.stream()
        .filter(clash -> !known.contains(clash.id()) || missing(clash) > missing.get(clash.id()))
        .toList();
  }

  private static int missing(Clash clash) {
    return clash.findProof().map(Shortage::missing).orElse(0);
  }
}
