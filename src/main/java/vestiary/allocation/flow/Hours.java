package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import vestiary.allocation.plan.Ride;

/**
 * The times at each church at which something becomes free or must be ready, and the trips worth
 * making between them: from the latest time that still reaches a set-out, to the first set-out that
 * it reaches. All other trips come to the same by waiting before or after.
 *
 * <p>Source: N. Kliewer, T. Mellouli, L. Suhl, "A time-space network based exact optimization model
 * for multi-depot bus scheduling" (2006; title from memory).
 */
final class Hours {

  /** By time, whether something must be ready then. */
  private final List<TreeMap<Long, Boolean>> byPlace;

  private final Roads roads;

  Hours(Roads roads) {
    this.roads = roads;
    this.byPlace =
        IntStream.range(0, roads.churches())
            .mapToObj(place -> new TreeMap<Long, Boolean>())
            .toList();
  }

  void addFree(int place, long time) {
    byPlace.get(place).putIfAbsent(time, false);
  }

  void addDue(int place, long time) {
    byPlace.get(place).put(time, true);
  }

  void add(Visit visit) {
    addDue(visit.place(), visit.setOut());
    addFree(visit.place(), visit.cleared());
  }

  void add(Ride ride) {
    addFree(roads.place(ride.from()), Roads.floor(ride.departs()));
    addFree(roads.place(ride.to()), Roads.ceiling(ride.arrives()));
  }

  void addAll(Hours others) {
    for (int place = 0; place < byPlace.size(); place++) {
      TreeMap<Long, Boolean> own = byPlace.get(place);
      others.byPlace.get(place).forEach((time, due) -> own.merge(time, due, Boolean::logicalOr));
    }
  }

  /** The hours at some of the churches. */
  Hours within(IntPredicate places) {
    Hours within = new Hours(roads);
    IntStream.range(0, byPlace.size())
        .filter(places)
        .forEach(place -> within.byPlace.get(place).putAll(byPlace.get(place)));
    return within;
  }

  /** The hours up to a time, it included. */
  Hours until(long last) {
    Hours until = new Hours(roads);
    for (int place = 0; place < byPlace.size(); place++) {
      until.byPlace.get(place).putAll(byPlace.get(place).headMap(last, true));
    }
    return until;
  }

  /** The latest of all; {@link Roads#ALWAYS} if there is none. */
  long last() {
    return byPlace.stream()
        .filter(times -> !times.isEmpty())
        .mapToLong(TreeMap::lastKey)
        .max()
        .orElse(Roads.ALWAYS);
  }

  boolean isEmpty(int place) {
    return byPlace.get(place).isEmpty();
  }

  /** In ascending order. */
  Iterable<Long> at(int place) {
    return byPlace.get(place).keySet();
  }

  /** All trips worth making for their own sake, by churches and time. */
  List<Trip> trips() {
    List<Trip> trips = new ArrayList<>();
    for (int from = 0; from < byPlace.size(); from++) {
      for (int to = 0; to < byPlace.size(); to++) {
        if (from != to && roads.between(from, to) < Roads.NO_WAY && !isEmpty(from)) {
          addTrips(from, to, trips);
        }
      }
    }
    return trips;
  }

  private void addTrips(int from, int to, List<Trip> trips) {
    long time = roads.between(from, to);
    long dueBefore = Roads.ALWAYS;
    for (Map.Entry<Long, Boolean> hour : byPlace.get(to).entrySet()) {
      if (hour.getValue()) {
        Long ready = byPlace.get(from).floorKey(hour.getKey() - time);
        if (ready != null && (dueBefore == Roads.ALWAYS || ready + time > dueBefore)) {
          trips.add(new Trip(from, to, ready, hour.getKey(), ""));
        }
        dueBefore = hour.getKey();
      }
    }
  }
}
