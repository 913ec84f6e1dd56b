package vestiary.telling;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import vestiary.plan.PlanResult;

/** Says what has become of the journeys that leave a church or come to it. */
final class RideNews {

  private final WeekSeen week;
  private final Tongue tongue;
  private final SacristanWeek whole;
  private final Instant now;

  RideNews(WeekSeen week, Tongue tongue, SacristanWeek whole, Instant now) {
    this.week = week;
    this.tongue = tongue;
    this.whole = whole;
    this.now = now;
  }

  /** Those that leave, or those that come; first what is new or otherwise. */
  List<LetterView.Item> items(ChurchWeek before, ChurchWeek after, boolean leaves) {
    List<ChurchWeek.Ride> gone = new ArrayList<>(without(before, after, leaves));
    List<LetterView.Item> items = new ArrayList<>();
    for (ChurchWeek.Ride ride : without(after, before, leaves)) {
      Optional<ChurchWeek.Ride> was = gone.stream().filter(one -> isLike(one, ride)).findFirst();
      was.ifPresent(gone::remove);
      find(ride).map(trip -> item(ride, trip, was)).ifPresent(items::add);
    }
    gone.forEach(
        ride ->
            items.add(new LetterView.Item(head(ride), List.of(tongue.say("sacristy.trip.gone")))));
    return items;
  }

  private List<ChurchWeek.Ride> without(ChurchWeek these, ChurchWeek others, boolean leaves) {
    return these.rides().stream()
        .filter(ride -> ride.leaves() == leaves && ride.by().isAfter(now))
        .filter(ride -> !others.rides().contains(ride))
        .toList();
  }

  /** Whether it is the same journey as people see it: the same way with something of the same. */
  private static boolean isLike(ChurchWeek.Ride one, ChurchWeek.Ride other) {
    return one.other().equals(other.other())
        && (one.trip().equals(other.trip())
            || one.pieces().stream().anyMatch(other.pieces()::contains));
  }

  private LetterView.Item item(
      ChurchWeek.Ride ride, PlanResult.Trip trip, Optional<ChurchWeek.Ride> was) {
    LetterView.Item item = ride.leaves() ? whole.leaving(trip) : whole.coming(trip);
    List<String> changes =
        was.map(before -> changes(before, ride))
            .orElseGet(() -> List.of(tongue.say("sacristy.trip.new")));
    return new LetterView.Item(
        item.head(), Stream.concat(changes.stream(), item.lines().stream()).toList());
  }

  private List<String> changes(ChurchWeek.Ride was, ChurchWeek.Ride is) {
    List<String> lines = new ArrayList<>();
    if (!was.by().equals(is.by())) {
      lines.add(tongue.say("sacristy.trip.was", tongue.moment(week.local(was.by()))));
    }
    if (!was.pieces().equals(is.pieces())) {
      lines.add(tongue.say("sacristy.trip.pieces", tongue.list(was.pieces())));
    }
    if (lines.isEmpty()) {
      lines.add(tongue.say("sacristy.trip.other-carrier"));
    }
    return lines;
  }

  private Optional<PlanResult.Trip> find(ChurchWeek.Ride ride) {
    return week.trips().stream().filter(trip -> trip.id().equals(ride.trip())).findFirst();
  }

  private String head(ChurchWeek.Ride ride) {
    return tongue.say(
            ride.leaves() ? "trip.leaves" : "trip.comes",
            tongue.day(week.local(ride.by()).toLocalDate()),
            tongue.clock(week.local(ride.by())),
            week.church(ride.other()))
        + ": "
        + tongue.list(ride.pieces());
  }
}
