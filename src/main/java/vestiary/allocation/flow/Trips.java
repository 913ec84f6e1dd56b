package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.solver.Program;

/** All journeys of a program, and what they cost. */
final class Trips {

  /**
   * Among so few churches a set may ride along through a third one; among more that is hardly ever
   * worth looking for.
   */
  private static final int FEW_CHURCHES = 12;

  private final Demand demand;
  private final Roads roads;
  private final Manner manner;
  private final Program program;
  private final Costs costs;
  private final List<Trip> trips = new ArrayList<>();
  private final List<Integer> carriages = new ArrayList<>();
  private final List<List<Integer>> flows = new ArrayList<>();

  Trips(Demand demand, Roads roads, Manner manner, Program program, Costs costs) {
    this.demand = demand;
    this.roads = roads;
    this.manner = manner;
    this.program = program;
    this.costs = costs;
  }

  List<Trip> all() {
    return trips;
  }

  boolean isCarriage(int trip) {
    return carriages.get(trip) >= 0;
  }

  /** Whether all that rides together counts as one. */
  boolean areShared() {
    return manner == Manner.CARRIAGES;
  }

  /** The columns of what goes on a trip. */
  List<Integer> flows(int trip) {
    return flows.get(trip);
  }

  /** For each trip the column that says whether it is made; -1 for rides and where pieces count. */
  List<Integer> carriages() {
    return carriages;
  }

  /** The program with every carriage made, so that only flows are left to be found. */
  Program opened() {
    Program opened = program.copy();
    carriages.stream().filter(c -> c >= 0).forEach(c -> opened.boundColumn(c, 1, 1));
    return opened;
  }

  /**
   * The program with no more carriages than a solution makes, but for those that arrive in a time.
   */
  Program focused(long[] columns, long from, long until) {
    Program focused = program.copy();
    for (int trip = 0; trip < trips.size(); trip++) {
      boolean within = from <= trips.get(trip).due() && trips.get(trip).due() <= until;
      if (isCarriage(trip) && !within) {
        focused.boundColumn(carriages.get(trip), 0, columns[carriages.get(trip)]);
      }
    }
    return focused;
  }

  /** The same flows with no more carriages than they need. */
  long[] closed(long[] columns) {
    long[] closed = columns.clone();
    for (int trip = 0; trip < trips.size(); trip++) {
      if (carriages.get(trip) >= 0) {
        closed[carriages.get(trip)] = load(trip, columns) > 0 ? 1 : 0;
      }
    }
    return closed;
  }

  /**
   * What each item's ride would cost if all that rode together in a solution shared it; a trip that
   * was not made costs what it cost before.
   *
   * <p>Source: D. Kim, P. Pardalos, "A solution approach to the fixed charge network flow problem
   * using a dynamic slope scaling procedure" (1999; from memory).
   */
  long[] shares(long[] columns, long[] before) {
    long[] shares = before.clone();
    for (int trip = 0; trip < trips.size(); trip++) {
      long load = columns.length == 0 ? 1 : load(trip, columns);
      if (load > 0 && isCarriage(trip)) {
        long share = whole(trips.get(trip)) / load;
        flows.get(trip).forEach(column -> shares[column] = share);
      }
    }
    return shares;
  }

  private long load(int trip, long[] columns) {
    return flows.get(trip).stream().mapToLong(column -> columns[column]).sum();
  }

  private long whole(Trip trip) {
    // An hour weighs as much as another carriage: close enough for a first plan.
    return 100 * (60 + minutes(trip));
  }

  private int minutes(Trip trip) {
    return (int) ((roads.between(trip.from(), trip.to()) + 59) / 60);
  }

  /** Writes the hours of every network and the trips between them. */
  void write(List<Network> networks, boolean anywhere) {
    if (manner == Manner.CARRIAGES) {
      writeShared(networks);
      return;
    }
    for (Network network : networks) {
      Hours hours = network.hours(anywhere);
      addRides(hours, network);
      network.write(hours, anywhere);
      if (network.commodity().mayBeCarried()) {
        int first = trips.size();
        addTrips(hours);
        for (int trip = first; trip < trips.size(); trip++) {
          charge(trip, network);
        }
      }
    }
  }

  private void writeShared(List<Network> networks) {
    Hours shared = new Hours(roads);
    demand.slots().forEach(slot -> shared.add(slot.visit()));
    networks.forEach(network -> shared.addAll(network.hours(false)));
    demand.situation().rides().forEach(shared::add);
    addTrips(shared);
    for (Network network : networks) {
      Hours own = network.hours(false);
      boolean everywhere = roads.churches() <= FEW_CHURCHES && network.commodity().mayBeCarried();
      // After the last that it is wanted for there is nothing to be done with it.
      Hours useful = shared.within(place -> everywhere || !own.isEmpty(place)).until(own.last());
      network.write(useful, false);
      if (network.commodity().mayBeCarried()) {
        IntStream.range(0, trips.size()).forEach(trip -> charge(trip, network));
      }
    }
  }

  private void addRides(Hours hours, Network network) {
    if (network.commodity().mayBeCarried() && !manner.isCoverage()) {
      demand.situation().rides().stream()
          .filter(ride -> !hours.isEmpty(roads.place(ride.to())))
          .filter(ride -> !hours.isEmpty(roads.place(ride.from())))
          .toList()
          .forEach(hours::add);
    }
  }

  private void addTrips(Hours hours) {
    hours.trips().forEach(trip -> add(trip));
    if (!manner.isCoverage()) {
      demand.situation().rides().forEach(ride -> add(trip(ride)));
    }
  }

  private void add(Trip trip) {
    trips.add(trip);
    carriages.add(-1);
    flows.add(new ArrayList<>());
  }

  private Trip trip(Ride ride) {
    return new Trip(
        roads.place(ride.from()),
        roads.place(ride.to()),
        Roads.floor(ride.departs()),
        Roads.ceiling(ride.arrives()),
        ride.who());
  }

  private void charge(int number, Network network) {
    Trip trip = trips.get(number);
    int column = network.travel(trip, number);
    if (column < 0 || manner.isCoverage()) {
      return;
    }
    flows.get(number).add(column);
    if (network.commodity().burden() > 0) {
      costs.add(Measure.PREFERENCES, column, network.commodity().burden());
    }
    if (!trip.isRide() && manner == Manner.PIECES) {
      charge(trip, column);
    } else if (!trip.isRide()) {
      int capacity = (int) program.columnMost(column);
      int row = program.row(-Program.UNBOUNDED, 0);
      program.put(row, column, 1);
      program.put(row, carriage(number), -capacity);
    }
  }

  private int carriage(int number) {
    if (carriages.get(number) < 0) {
      int column = program.switchColumn();
      carriages.set(number, column);
      charge(trips.get(number), column);
    }
    return carriages.get(number);
  }

  private void charge(Trip trip, int column) {
    costs.add(Measure.CARRIAGES, column, 1);
    costs.add(Measure.MINUTES, column, (int) ((roads.between(trip.from(), trip.to()) + 59) / 60));
  }
}
