package vestiary.allocation.celebrant;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/** Why one and the same person cannot be at two liturgies: time, road, and nothing else. */
final class Apart {

  private final Question question;

  Apart(Question question) {
    this.question = question;
  }

  /**
   * Why whoever is at a liturgy cannot be at another; empty if he can be at both.
   *
   * @param here the one that is asked about
   */
  Optional<WhyNot> find(Stay other, Stay here) {
    return question.pace().goTogether(other, here, question.journeys())
        ? Optional.empty()
        : Optional.of(whyNot(other, here));
  }

  private WhyNot whyNot(Stay other, Stay here) {
    boolean before = other.start().isBefore(here.end());
    Optional<Duration> way =
        before
            ? question.journeys().find(other.church(), here.church())
            : question.journeys().find(here.church(), other.church());
    if (way.isEmpty()) {
      return new WhyNot.NoRoad(other);
    }
    Pace pace = question.pace();
    return before
        ? new WhyNot.Before(
            other,
            way.get(),
            pace.findEarliest(other, here.church(), question.journeys()).orElseThrow())
        : new WhyNot.After(other, way.get(), latest(here, other, way.get(), pace));
  }

  /** So as to be ready for what follows, and not too soon after one another. */
  private static Instant latest(Stay here, Stay next, Duration way, Pace pace) {
    Duration length = Duration.between(here.start(), here.end());
    Instant ready = next.start().minus(pace.before()).minus(way).minus(pace.after()).minus(length);
    Instant apart = next.start().minus(pace.leastGap());
    return ready.isBefore(apart) ? ready : apart;
  }
}
