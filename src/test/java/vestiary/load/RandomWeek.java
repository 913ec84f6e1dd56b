package vestiary.load;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.UUID;
import java.util.stream.IntStream;
import vestiary.allocation.Journey;
import vestiary.allocation.Journeys;
import vestiary.allocation.Span;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassColour;
import vestiary.vesting.MassId;
import vestiary.vesting.MassTime;
import vestiary.vesting.Ministers;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.PieceKind;
import vestiary.vesting.Sacristy;
import vestiary.vesting.VestedMass;
import vestiary.vesting.VestingNorms;
import vestiary.vesting.VestingPolicies;

/**
 * An invented week of many churches, the same for the same numbers: half of the Masses at the
 * week's end, one in five with concelebrants, one in ten pieces away, one in twenty bound to its
 * church.
 */
public final class RandomWeek {

  private static final int DAY = 24 * 60;
  private static final Instant MONDAY = Instant.parse("2027-06-07T00:00:00Z");
  private static final Sacristy SACRISTY =
      new Sacristy(Duration.ofMinutes(30), Duration.ofMinutes(15));
  private static final List<Colour> COLOURS =
      List.of(Colour.GREEN, Colour.WHITE, Colour.RED, Colour.VIOLET);

  private final Random random;
  private final int churches;

  private RandomWeek(int churches, long seed) {
    this.churches = churches;
    this.random = new Random(seed);
  }

  /** A week of so many churches, Masses and sets; about two persons vest at a Mass. */
  public static Span of(int churches, int masses, int sets, long seed) {
    RandomWeek week = new RandomWeek(churches, seed);
    List<Need> needs =
        IntStream.range(0, masses)
            .mapToObj(week::mass)
            .flatMap(mass -> VestingNorms.needsOf(mass, VestingPolicies.DEFAULTS).stream())
            .toList();
    return new Span(needs, week.pieces(sets), week.journeys(), VestingPolicies.DEFAULTS);
  }

  private VestedMass mass(int number) {
    boolean weekend = random.nextBoolean();
    int day = weekend ? 5 + random.nextInt(2) : random.nextInt(5);
    int start = day * DAY + 8 * 60 + 30 * random.nextInt(21);
    Colour colour = weekend && day == 6 ? Colour.GREEN : COLOURS.get(random.nextInt(4));
    return new VestedMass(
        new MassId(new UUID(2, number)),
        church(random.nextInt(churches)),
        MassKind.OF_THE_DAY,
        new MassTime(
            MONDAY.plus(Duration.ofMinutes(start)),
            Duration.ofMinutes(weekend ? 60 : 30),
            weekend,
            SACRISTY,
            Duration.ZERO),
        new MassColour(colour, false, false),
        new Ministers(
            false,
            random.nextInt(5) == 0 ? 1 + random.nextInt(6) : 0,
            random.nextInt(2),
            List.of()));
  }

  private List<Piece> pieces(int sets) {
    List<Piece> pieces = new ArrayList<>();
    for (int number = 0; number < sets; number++) {
      Colour colour = COLOURS.get(number % 4);
      boolean dalmatic = number % 5 == 0;
      addSet(
          pieces,
          number,
          colour,
          dalmatic ? PieceKind.DALMATIC : PieceKind.CHASUBLE,
          dalmatic ? PieceKind.DEACON_STOLE : PieceKind.STOLE);
    }
    return pieces;
  }

  private void addSet(
      List<Piece> pieces, int number, Colour colour, PieceKind outer, PieceKind stole) {
    ChurchId home = church(random.nextInt(churches));
    boolean stays = random.nextInt(20) == 0;
    Instant from = MONDAY.plus(Duration.ofMinutes(random.nextInt(7 * DAY)));
    List<Away> away =
        random.nextInt(10) == 0
            ? List.of(new Away(from, from.plus(Duration.ofDays(3)), "at the cleaner"))
            : List.of();
    String set = "S" + number;
    pieces.add(new Piece(set + "-1", outer, List.of(colour), home, stays, set, away));
    pieces.add(new Piece(set + "-2", stole, List.of(colour), home, stays, set, away));
  }

  private Journeys journeys() {
    int[][] places = new int[churches][];
    IntStream.range(0, churches)
        .forEach(n -> places[n] = new int[] {random.nextInt(40), random.nextInt(40)});
    List<Journey> roads = new ArrayList<>();
    for (int from = 0; from < churches; from++) {
      for (int to = 0; to < churches; to++) {
        int minutes =
            Math.abs(places[from][0] - places[to][0]) + Math.abs(places[from][1] - places[to][1]);
        roads.add(new Journey(church(from), church(to), Duration.ofMinutes(minutes)));
      }
    }
    return Journeys.of(roads);
  }

  private static ChurchId church(int number) {
    return new ChurchId(new UUID(1, number));
  }
}
