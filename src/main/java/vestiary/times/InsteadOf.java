package vestiary.times;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Puts together what people would call one change: a usual Mass that is not said, and one of the
 * same kind that is said on that day in that church although it is not usual.
 */
final class InsteadOf {

  private InsteadOf() {}

  /** The same times, with such a Mass told as instead of the usual one. */
  static PublicTimes pair(PublicTimes times) {
    List<PublicTimes.Gap> gaps = new ArrayList<>(times.gaps());
    List<PublicTimes.Mass> masses = new ArrayList<>();
    for (PublicTimes.Mass mass : times.masses()) {
      Optional<PublicTimes.Gap> instead =
          mass.ofTheDay() && mass.usual().stream().anyMatch(PublicTimes.Usual::extra)
              ? nearest(mass, gaps)
              : Optional.empty();
      instead.ifPresent(gaps::remove);
      masses.add(instead.map(gap -> moved(mass, gap)).orElse(mass));
    }
    return new PublicTimes(masses, gaps);
  }

  private static Optional<PublicTimes.Gap> nearest(
      PublicTimes.Mass mass, List<PublicTimes.Gap> gaps) {
    return gaps.stream()
        .filter(gap -> gap.date().equals(mass.date()) && gap.church().equals(mass.church()))
        .min(Comparator.comparing(gap -> Duration.between(gap.time(), mass.time()).abs()));
  }

  private static PublicTimes.Mass moved(PublicTimes.Mass mass, PublicTimes.Gap gap) {
    return new PublicTimes.Mass(
        mass.id(),
        mass.church(),
        mass.date(),
        mass.time(),
        mass.minutes(),
        mass.ofTheDay(),
        mass.what(),
        mass.celebrant(),
        List.of(new PublicTimes.Usual(false, gap.date(), gap.time(), gap.church())));
  }
}
