package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import vestiary.allocation.solver.Program;

/**
 * One commodity's churches and hours as rows of a program, and the ways between them as columns:
 * waiting in the cupboard, serving a Mass, staying out from one Mass to the next, being carried.
 */
final class Network {

  private static final int NONE = -1;

  private record Hour(int place, long time) {}

  private final Commodity commodity;
  private final List<Slot> slots;
  private final Roads roads;
  private final Program program;
  private final List<Arc> arcs = new ArrayList<>();
  private final Map<Hour, Integer> cupboards = new HashMap<>();
  private final Map<Integer, Integer> begins = new HashMap<>();
  private final Map<Integer, Integer> dones = new HashMap<>();
  private final Map<Integer, Integer> serving = new LinkedHashMap<>();
  private final int[] sources;
  private final int sink;
  private final int most;

  /**
   * @param serves numbers of the Masses it serves
   * @param parted whether it is pieces of sets, of which there are none but those taken apart
   */
  Network(
      Commodity commodity,
      List<Slot> slots,
      int[] serves,
      boolean parted,
      Roads roads,
      Program program) {
    this.commodity = commodity;
    this.slots = slots;
    this.roads = roads;
    this.program = program;
    this.most = commodity.size();
    this.sources =
        commodity.supplies().stream().mapToInt(s -> source(parted ? 0 : s.size())).toArray();
    int all = parted ? 0 : most;
    this.sink = commodity.findDue().isPresent() ? program.row(-all, -all) : NONE;
    for (int slot : serves) {
      serving.put(slot, program.column(0, most));
    }
  }

  Commodity commodity() {
    return commodity;
  }

  List<Arc> arcs() {
    return arcs;
  }

  /** Row of the source of each supply. */
  int[] sources() {
    return sources;
  }

  /** Row of the node where all must end, or -1. */
  int sink() {
    return sink;
  }

  /** For each Mass it serves, the column of how many serve it. */
  Map<Integer, Integer> serving() {
    return serving;
  }

  /** The hours it knows. */
  Hours hours(boolean anywhere) {
    Hours hours = new Hours(roads);
    serving.keySet().forEach(slot -> hours.add(slots.get(slot).visit()));
    for (Supply supply : commodity.supplies()) {
      if (!anywhere || supply.after().cleared() > Roads.ALWAYS) {
        hours.addFree(supply.after().place(), supply.after().cleared());
      }
    }
    commodity.findDue().ifPresent(due -> hours.addDue(due.place(), due.setOut()));
    return hours;
  }

  /** Writes everything but the journeys. */
  void write(Hours hours, boolean anywhere) {
    layOutCupboards(hours);
    turnBetweenMasses();
    for (int supply = 0; supply < sources.length; supply++) {
      release(supply, hours, anywhere);
    }
    // Last, when it is known which Masses have a way in or out past the cupboard.
    serving.keySet().forEach(this::serve);
    commodity
        .findDue()
        .ifPresent(due -> arc(cupboard(due.place(), due.setOut()), sink, NONE, NONE));
  }

  /** Lets items go on a trip, if both its ends are known here; answers the column, or -1. */
  int travel(Trip trip, int number) {
    Integer from = cupboards.get(new Hour(trip.from(), trip.ready()));
    Integer to = cupboards.get(new Hour(trip.to(), trip.due()));
    return from == null || to == null ? NONE : arc(from, to, NONE, number);
  }

  /** Lets sets of a supply be taken apart into the two pieces, as many as the column says. */
  void part(int supply, int column, Network one, Network other) {
    program.put(sources[supply], column, 1);
    program.put(one.sources[supply], column, -1);
    program.put(other.sources[supply], column, -1);
    if (sink != NONE) {
      program.put(sink, column, -1);
      program.put(one.sink, column, 1);
      program.put(other.sink, column, 1);
    }
  }

  private int source(int size) {
    return program.row(commodity.findDue().isPresent() ? size : -Program.UNBOUNDED, size);
  }

  private int node() {
    return program.row(commodity.findDue().isPresent() ? 0 : -Program.UNBOUNDED, 0);
  }

  private void layOutCupboards(Hours hours) {
    for (int place = 0; place < roads.churches(); place++) {
      int before = NONE;
      for (long time : hours.at(place)) {
        int node = node();
        cupboards.put(new Hour(place, time), node);
        if (before != NONE) {
          arc(before, node, NONE, NONE);
        }
        before = node;
      }
    }
  }

  private void turnBetweenMasses() {
    Map<Integer, List<Integer>> byPlace = new HashMap<>();
    serving
        .keySet()
        .forEach(
            slot ->
                byPlace
                    .computeIfAbsent(visit(slot).place(), unknown -> new ArrayList<>())
                    .add(slot));
    for (int one : serving.keySet()) {
      for (int other : byPlace.get(visit(one).place())) {
        if (one != other && isOnlyATurn(visit(one), visit(other))) {
          arc(done(one), begin(other), NONE, NONE);
        }
      }
      if (commodity.findDue().filter(due -> isOnlyATurn(visit(one), due)).isPresent()) {
        arc(done(one), sink, NONE, NONE);
      }
    }
  }

  private boolean isOnlyATurn(Visit one, Visit other) {
    return one.turnsInto(other, roads) && one.cleared() > other.setOut();
  }

  private void serve(int slot) {
    Visit visit = visit(slot);
    int setOut = cupboard(visit.place(), visit.setOut());
    int cleared = cupboard(visit.place(), visit.cleared());
    if (begins.containsKey(slot)) {
      arc(setOut, begins.get(slot), NONE, NONE);
    }
    if (dones.containsKey(slot)) {
      arc(dones.get(slot), cleared, NONE, NONE);
    }
    join(
        begins.getOrDefault(slot, setOut),
        dones.getOrDefault(slot, cleared),
        serving.get(slot),
        slot,
        NONE);
  }

  private void release(int supply, Hours hours, boolean anywhere) {
    Visit after = commodity.supplies().get(supply).after();
    if (anywhere && after.cleared() == Roads.ALWAYS) {
      IntStream.range(0, roads.churches())
          .filter(place -> roads.between(after.place(), place) < Roads.NO_WAY)
          .filter(place -> !hours.isEmpty(place))
          .filter(place -> commodity.mayBeCarried() || place == commodity.bound())
          .forEach(
              place ->
                  arc(
                      sources[supply],
                      cupboard(place, hours.at(place).iterator().next()),
                      NONE,
                      NONE));
      return;
    }
    arc(sources[supply], cupboard(after.place(), after.cleared()), NONE, NONE);
    for (int slot : serving.keySet()) {
      if (isOnlyATurn(after, visit(slot))) {
        arc(sources[supply], begin(slot), NONE, NONE);
      }
    }
    if (commodity.findDue().filter(due -> isOnlyATurn(after, due)).isPresent()) {
      arc(sources[supply], sink, NONE, NONE);
    }
  }

  private int arc(int from, int to, int slot, int trip) {
    return join(from, to, program.column(0, most), slot, trip);
  }

  private int join(int from, int to, int column, int slot, int trip) {
    program.put(from, column, 1);
    program.put(to, column, -1);
    arcs.add(new Arc(from, to, column, slot, trip));
    return column;
  }

  private Visit visit(int slot) {
    return slots.get(slot).visit();
  }

  private int cupboard(int place, long time) {
    return cupboards.get(new Hour(place, time));
  }

  private int begin(int slot) {
    return begins.computeIfAbsent(slot, unknown -> node());
  }

  private int done(int slot) {
    return dones.computeIfAbsent(slot, unknown -> node());
  }
}
