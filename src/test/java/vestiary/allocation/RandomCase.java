package vestiary.allocation;

import static vestiary.allocation.Minutes.minute;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.vesting.ChurchId;
import vestiary.vesting.MassId;
import vestiary.vesting.Need;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/**
 * Invented days of three churches, the same for the same seed: some journeys unknown, pieces of one
 * to three colours, some bound to their church, some away for a while.
 */
final class RandomCase {

  private static final List<Colour> COLOURS = List.of(Colour.WHITE, Colour.RED, Colour.GREEN);

  private static final List<Colour> MANY =
      List.of(Colour.WHITE, Colour.RED, Colour.GREEN, Colour.VIOLET, Colour.ROSE, Colour.BLACK);

  private RandomCase() {}

  /** Two to six Masses and one to four pieces. */
  static Span small(int seed) {
    Random random = new Random(seed);
    return randomSpan(2 + random.nextInt(5), 1 + random.nextInt(4), random);
  }

  /** Seven to ten Masses and two to seven pieces. */
  static Span crowded(int seed) {
    Random random = new Random(seed);
    return randomSpan(7 + random.nextInt(4), 2 + random.nextInt(6), random);
  }

  /** Nine to eleven Masses in three to six churches; pieces that serve any of six colours. */
  static Span unfriendly(int seed) {
    Random random = new Random(seed);
    int churches = 3 + random.nextInt(4);
    List<Need> needs =
        IntStream.range(0, 9 + random.nextInt(3))
            .mapToObj(mass -> randomNeed(mass, churches, MANY, random))
            .toList();
    List<Piece> pieces = new ArrayList<>();
    for (int pool = 3 + random.nextInt(4); pool > 0; pool--) {
      List<Colour> colours = new ArrayList<>(MANY);
      Collections.shuffle(colours, random);
      Colour[] served = colours.subList(0, 2 + random.nextInt(3)).toArray(Colour[]::new);
      ChurchId home = randomChurch(churches, random);
      for (int like = 1 + random.nextInt(2); like > 0; like--) {
        pieces.add(Minutes.piece("p" + pool + like, home, served));
      }
    }
    return new Span(needs, pieces, Journeys.of(roads(churches, random)), Minutes.withTurn(5));
  }

  private static Span randomSpan(int masses, int stock, Random random) {
    List<Journey> roads = roads(3, random);
    List<Need> needs =
        IntStream.range(0, masses).mapToObj(n -> randomNeed(n, 3, COLOURS, random)).toList();
    List<Piece> pieces =
        IntStream.range(0, stock)
            .mapToObj(n -> keptBack(randomPiece(n, random), needs, random))
            .toList();
    return new Span(needs, pieces, Journeys.of(roads), Minutes.withTurn(5));
  }

  /** Journeys between the first so many churches, some of them unknown. */
  static List<Journey> roads(int churches, Random random) {
    List<Journey> roads = new ArrayList<>();
    for (int one = 1; one <= churches; one++) {
      for (int other = one + 1; other <= churches; other++) {
        if (random.nextInt(12) > 0) {
          int minutes = 5 + random.nextInt(60);
          roads.addAll(Minutes.roads(minutes, Minutes.church(one), Minutes.church(other)));
        }
      }
    }
    return roads;
  }

  /** A Mass at any hour in one of the first so many churches. */
  static Need randomNeed(int mass, int churches, List<Colour> colours, Random random) {
    int start = 60 + 15 * random.nextInt(24);
    int length = 30 + 15 * random.nextInt(3);
    Window window =
        new Window(
            minute(start - 30), minute(start), minute(start + length), minute(start + length + 15));
    return Minutes.need(
        mass, randomChurch(churches, random), window, colours.get(random.nextInt(colours.size())));
  }

  /** Some owners do not give a piece for one of the Masses. */
  private static Piece keptBack(Piece piece, List<Need> needs, Random random) {
    Set<MassId> kept =
        random.nextInt(5) == 0 ? Set.of(needs.get(random.nextInt(needs.size())).mass()) : Set.of();
    return new Piece(
        piece.code(),
        piece.kind(),
        piece.colours(),
        piece.home(),
        piece.staysHome(),
        piece.set(),
        piece.away(),
        piece.make(),
        kept);
  }

  private static Piece randomPiece(int number, Random random) {
    List<Colour> colours = new ArrayList<>(COLOURS);
    colours.removeIf(colour -> random.nextInt(3) == 0);
    Colour[] serves =
        colours.isEmpty() ? new Colour[] {Colour.WHITE} : colours.toArray(Colour[]::new);
    Piece piece = Minutes.piece("p" + number, randomChurch(3, random), serves);
    if (random.nextInt(5) == 0) {
      return new Piece(
          piece.code(), piece.kind(), piece.colours(), piece.home(), true, "", List.of());
    }
    int from = 60 + random.nextInt(300);
    return random.nextInt(4) == 0
        ? Minutes.away(piece, from, from + 30 + random.nextInt(120))
        : piece;
  }

  private static ChurchId randomChurch(int churches, Random random) {
    return Minutes.church(1 + random.nextInt(churches));
  }
}
