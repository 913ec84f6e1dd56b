package vestiary.allocation.planner;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.stream.IntStream;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Span;
import vestiary.allocation.plan.Fit;
import vestiary.allocation.plan.Hold;
import vestiary.allocation.plan.Occasion;
import vestiary.allocation.plan.Ride;
import vestiary.allocation.plan.Situation;
import vestiary.allocation.plan.Traits;
import vestiary.calendar.Colour;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.LadderOrder;
import vestiary.vesting.Make;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Norm;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Role;
import vestiary.vesting.Step;
import vestiary.vesting.VestingPolicies;
import vestiary.vesting.Wearer;
import vestiary.vesting.Window;

/**
 * Invented days, the same for the same seed, small enough for every assignment to be tried: a few
 * Masses with one or two vested, whole and broken sets of three colours, holds, care, pieces that
 * stay home, lengths that do not fit, suits, rides, sets that lie elsewhere in the beginning.
 */
final class SmallWorld {

  private static final List<Colour> COLOURS = List.of(Colour.WHITE, Colour.RED, Colour.GOLD);

  private final Random random;
  private final Random left;
  private final int churches;
  private final boolean halves;
  private final List<Need> needs = new ArrayList<>();
  private final List<Piece> pieces = new ArrayList<>();
  private final List<Hold> holds = new ArrayList<>();
  private final Map<String, Traits> traits = new HashMap<>();
  private final Map<MassId, Occasion> occasions = new HashMap<>();
  private final Map<Wearer, Fit> fits = new HashMap<>();

  private SmallWorld(int seed, int churches, boolean halves) {
    this.random = new Random(seed);
    this.left = new Random(seed + 1_000_003L);
    this.churches = churches;
    this.halves = halves;
  }

  static Situation of(int seed, int churches) {
    return new SmallWorld(seed, churches, false).situation();
  }

  /** Where many bring a part of their own, so that sets of one colour must often be parted. */
  static Situation ofHalves(int seed, int churches) {
    return new SmallWorld(seed, churches, true).situation();
  }

  private Situation situation() {
    boolean withStoles = random.nextInt(3) == 0 || halves;
    int masses = withStoles ? 2 + random.nextInt(2) : 2 + random.nextInt(3);
    int stock = withStoles ? 1 + random.nextInt(3) : 1 + random.nextInt(4);
    IntStream.range(0, masses).forEach(number -> addMass(number, withStoles));
    IntStream.range(0, stock).forEach(number -> addPieces(number, withStoles));
    List<Ride> rides = IntStream.range(0, random.nextInt(3)).mapToObj(this::ride).toList();
    Span span = new Span(needs, pieces, journeys(), policies());
    return new Situation(span, holds, rides, traits, occasions, fits, List.of(), starts());
  }

  /** A piece in four was left somewhere, nearly always with the other of its set. */
  private Map<String, ChurchId> starts() {
    Map<String, ChurchId> bySet = new HashMap<>();
    Map<String, ChurchId> starts = new HashMap<>();
    for (Piece piece : pieces) {
      ChurchId somewhere = left.nextInt(4) == 0 ? church(left.nextInt(churches)) : piece.home();
      boolean together = !piece.set().isEmpty() && left.nextInt(8) > 0;
      starts.put(
          piece.code(),
          together ? bySet.computeIfAbsent(piece.set(), unknown -> somewhere) : somewhere);
    }
    return starts;
  }

  private void addMass(int number, boolean withStoles) {
    MassId mass = new MassId(new UUID(1, number));
    ChurchId church = randomChurch();
    int start = 60 + 15 * random.nextInt(24);
    int length = 30 + 15 * random.nextInt(3);
    int setOut = 15 + 15 * random.nextInt(3);
    Window window =
        new Window(
            minute(start - setOut),
            minute(start),
            minute(start + length),
            minute(start + length + 15));
    Colour colour = COLOURS.get(halves ? 0 : random.nextInt(2));
    int persons = 1 + random.nextInt(withStoles ? 2 : 3) / (random.nextInt(2) + 1);
    boolean festive = random.nextInt(3) == 0;
    if (random.nextInt(3) == 0) {
      occasions.put(mass, new Occasion("solemn", ""));
    }
    for (int person = 1; person <= persons; person++) {
      Wearer wearer =
          new Wearer(
              mass, person == 1 ? Role.PRINCIPAL : Role.CONCELEBRANT, person == 1 ? 1 : person - 1);
      if (random.nextInt(5) == 0) {
        fits.put(wearer, new Fit(130, 150, random.nextInt(3) == 0));
      }
      boolean principal = person == 1;
      Norm norm = new Norm(principal, principal ? List.of() : ladder(), "invented");
      int own = halves ? random.nextInt(3) : 0;
      if (own != 1) {
        add(new Need(wearer, church, window, PieceKind.CHASUBLE, colour, festive, norm));
      }
      if (withStoles && own != 2) {
        Norm must = new Norm(true, List.of(), "invented");
        add(new Need(wearer, church, window, PieceKind.STOLE, colour, festive, must));
      }
    }
  }

  private List<Step> ladder() {
    return switch (random.nextInt(3)) {
      case 0 -> List.of(Step.STOLE_OVER_ALB, Step.WHITE_CHASUBLE);
      case 1 -> List.of(Step.WHITE_CHASUBLE, Step.STOLE_OVER_ALB);
      default -> List.of(Step.WHITE_CHASUBLE);
    };
  }

  private void add(Need need) {
    needs.add(need);
  }

  private void addPieces(int number, boolean withStoles) {
    ChurchId home = randomChurch();
    Colour colour = COLOURS.get(halves ? 0 : random.nextInt(3));
    boolean stays = random.nextInt(6) == 0;
    List<Away> away = away();
    String code = "s" + number;
    String set = withStoles && random.nextInt(4) > 0 ? code : "";
    Set<MassId> kept = keptFrom();
    addPiece(code + "-c", PieceKind.CHASUBLE, colour, home, stays, set, away, kept);
    if (withStoles) {
      List<Away> own = random.nextInt(6) == 0 ? away() : away;
      Set<MassId> its = random.nextInt(6) == 0 ? keptFrom() : kept;
      addPiece(code + "-s", PieceKind.STOLE, colour, home, stays, set, own, its);
    }
    if (!stays && away.isEmpty() && random.nextInt(5) == 0) {
      hold(code + "-c");
    }
  }

  private void hold(String piece) {
    Need need = needs.get(random.nextInt(needs.size()));
    holds.add(new Hold(piece, need.mass(), need.church(), need.window()));
  }

  /** Some owners do not give a set for one of the Masses. */
  private Set<MassId> keptFrom() {
    return random.nextInt(6) == 0
        ? Set.of(needs.get(random.nextInt(needs.size())).mass())
        : Set.of();
  }

  private List<Away> away() {
    if (random.nextInt(5) > 0) {
      return List.of();
    }
    int from = 60 + random.nextInt(300);
    return List.of(new Away(minute(from), minute(from + 30 + random.nextInt(120)), "in care"));
  }

  private void addPiece(
      String code,
      PieceKind kind,
      Colour colour,
      ChurchId home,
      boolean stays,
      String set,
      List<Away> away,
      Set<MassId> kept) {
    pieces.add(new Piece(code, kind, List.of(colour), home, stays, set, away, Make.ANY, kept));
    traits.put(
        code,
        new Traits(
            random.nextInt(2) == 0 ? "jubilee" : "",
            random.nextInt(2) == 0 ? "solemn" : "ferial",
            "",
            random.nextInt(2) == 0 ? 120 : 135,
            random.nextInt(4) == 0,
            random.nextInt(5)));
  }

  private Ride ride(int number) {
    int from = random.nextInt(churches);
    int to = (from + 1 + random.nextInt(churches - 1)) % churches;
    int departs = 30 + random.nextInt(360);
    return new Ride(
        "driver " + number,
        church(from),
        church(to),
        minute(departs),
        minute(departs + 5 + random.nextInt(60)));
  }

  private Journeys journeys() {
    List<Journey> roads = new ArrayList<>();
    for (int from = 0; from < churches; from++) {
      for (int to = 0; to < churches; to++) {
        Duration time = Duration.ofMinutes(5 + random.nextInt(60));
        roads.add(new Journey(church(from), church(to), time));
      }
    }
    return Journeys.of(roads);
  }

  private ChurchId randomChurch() {
    return church(random.nextInt(churches));
  }

  private static VestingPolicies policies() {
    return new VestingPolicies(
        Duration.ZERO,
        Duration.ZERO,
        Duration.ZERO,
        Duration.ofMinutes(5),
        LadderOrder.STOLE,
        false);
  }

  static ChurchId church(int number) {
    return new ChurchId(new UUID(0, number));
  }

  static Instant minute(int minute) {
    return Instant.EPOCH.plusSeconds(60L * minute);
  }
}
