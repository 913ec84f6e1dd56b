package vestiary.allocation.flow;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import vestiary.allocation.solver.Program;
import vestiary.vesting.MassId;
import vestiary.vesting.Piece;

/**
 * The whole question as a program: a network for each commodity, the needs of each Mass served out
 * of what visits it, and what each column costs by each measure.
 */
public final class FlowModel {

  private record Parted(Commodity commodity, int supply, int column) {}

  private final Demand demand;
  private final Roads roads;
  private final Classes classes;
  private final Program program = new Program();
  private final Costs costs = new Costs();
  private final List<Network> networks = new ArrayList<>();
  private final List<Parted> parted = new ArrayList<>();
  private final Trips trips;
  private final Serving serving;

  private FlowModel(
      Demand demand, Collection<Item> items, Roads roads, Extent extent, Manner manner) {
    this.demand = demand;
    this.roads = roads;
    this.classes = new Classes(demand, items, !manner.isCoverage());
    for (Commodity commodity : Commodities.of(items, roads, classes, extent)) {
      if (commodity.mustTravel() || serves(commodity).length > 0) {
        addNetwork(commodity, manner);
      }
    }
    this.trips = new Trips(demand, roads, manner, program, costs);
    trips.write(networks, extent.anywhere());
    Imports imports = new Imports(demand, classes, networks, trips, roads, program);
    this.serving = new Serving(demand, classes, networks, imports, roads, program, costs);
    serving.write();
  }

  /**
   * The program of some needs and items.
   *
   * @param extent the time it is about; pieces come from anywhere in a coverage only
   */
  public static FlowModel of(
      Demand demand, Collection<Item> items, Roads roads, Extent extent, Manner manner) {
    return new FlowModel(demand, items, roads, extent, manner);
  }

  public Program program() {
    return program;
  }

  /** The cost of each column by a measure. */
  public long[] costs(Measure measure) {
    return costs.of(measure, program.columns());
  }

  /** What each item does by a solution, Mass by Mass and trip by trip. */
  public List<Chain> chains(long[] columns) {
    return IntStream.range(0, networks.size())
        .boxed()
        .flatMap(number -> new Walk(networks.get(number), number, columns).chains().stream())
        .toList();
  }

  /** Whether an item that does all that would lie in its own church after the last Mass. */
  public boolean isHomeInTheEnd(Item item, Chain chain) {
    int last =
        chain.legs().stream()
            .filter(Chain.Leg::isMass)
            .reduce((earlier, later) -> later)
            .map(leg -> slot(leg.slot()).visit().place())
            .orElse(chain.after().place());
    return roads.church(last).equals(item.pieces().get(0).home());
  }

  /** How many Masses there are. */
  public int slots() {
    return demand.slots().size();
  }

  /** The Mass of that number. */
  public Slot slot(int number) {
    return demand.slots().get(number);
  }

  /** What the wearers of a Mass have by a solution, one outfit for each of those that ask. */
  public List<Outfit> outfits(int slot, long[] columns) {
    return serving.outfits(slot, columns);
  }

  /** The class of a piece that may be worn. */
  public int type(Piece piece) {
    return classes.of(piece);
  }

  /** The program with all that visits and is carried as in a solution, who wears it being open. */
  public Program settled(long[] columns) {
    Program settled = program.copy();
    networks.stream()
        .flatMap(network -> network.arcs().stream())
        .mapToInt(Arc::column)
        .forEach(column -> settled.boundColumn(column, columns[column], columns[column]));
    return settled;
  }

  /** The trip of that number. */
  public Trip trip(int number) {
    return trips.all().get(number);
  }

  /** How many sets of each supply a solution takes apart; the first so many items of each. */
  public List<Item> parted(long[] columns) {
    return parted.stream()
        .flatMap(
            one ->
                one.commodity().supplies().get(one.supply()).items().stream()
                    .limit(columns[one.column()]))
        .distinct()
        .toList();
  }

  /** The program with no Mass served, which always has a solution that is quickly found. */
  public Program idle() {
    Program idle = program.copy();
    networks.forEach(
        network -> network.serving().values().forEach(column -> idle.boundColumn(column, 0, 0)));
    return idle;
  }

  /** The program with every carriage made, so that only flows are left to be found. */
  public Program opened() {
    return trips.opened();
  }

  /** The program with no more carriages than a solution makes, but for those of one time. */
  public Program focused(long[] columns, Extent extent) {
    return trips.focused(columns, extent.from(), extent.until());
  }

  /** The flows of a solution with no more carriages than they need. */
  public long[] closed(long[] columns) {
    return trips.closed(columns);
  }

  /**
   * A linear stand-in for the cost of carriages, by which flows are found quickly.
   *
   * @param columns a solution by the stand-in before, or none
   * @param before the stand-in before, or none
   */
  public long[] shares(long[] columns, long[] before) {
    return trips.shares(columns, before.length == 0 ? new long[program.columns()] : before);
  }

  /** Demands that a measure, counted over some Masses alone, be at most so much. */
  public void limit(Measure measure, Set<MassId> masses, long most) {
    serving.limit(measure, masses, most);
  }

  private void addNetwork(Commodity commodity, Manner manner) {
    Network network = network(commodity, false);
    if (manner == Manner.COVERAGE_PARTED && commodity.classes().size() == 2) {
      part(network);
    }
  }

  private Network network(Commodity commodity, boolean loose) {
    Network network =
        new Network(commodity, demand.slots(), serves(commodity), loose, roads, program);
    networks.add(network);
    return network;
  }

  private int[] serves(Commodity commodity) {
    return IntStream.range(0, demand.slots().size())
        .filter(slot -> serves(commodity, demand.slots().get(slot)))
        .toArray();
  }

  private boolean serves(Commodity commodity, Slot slot) {
    Visit visit = slot.visit();
    return (commodity.mayBeCarried() || commodity.bound() == visit.place())
        && !commodity.keptFrom().contains(slot.mass())
        && commodity.findDue().filter(due -> !visit.precedes(due, roads)).isEmpty()
        && commodity.supplies().stream().anyMatch(s -> s.after().precedes(visit, roads))
        && slot.groups().stream()
            .anyMatch(
                group ->
                    commodity.classes().stream()
                        .anyMatch(type -> classes.depth(type, group.ask()) != Ask.NEVER));
  }

  private void part(Network whole) {
    Commodity commodity = whole.commodity();
    Network one = network(loose(commodity, 0), true);
    Network other = network(loose(commodity, 1), true);
    for (int supply = 0; supply < commodity.supplies().size(); supply++) {
      int column = program.column(0, commodity.supplies().get(supply).size());
      costs.add(Measure.PARTED, column, 1);
      whole.part(supply, column, one, other);
      parted.add(new Parted(commodity, supply, column));
    }
  }

  private static Commodity loose(Commodity set, int place) {
    return new Commodity(
        List.of(set.classes().get(place)),
        set.bound(),
        set.keptFrom(),
        set.burden(),
        set.due(),
        set.supplies());
  }
}
