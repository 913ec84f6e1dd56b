package vestiary.allocation;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToLongFunction;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import vestiary.vesting.Away;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Piece;
import vestiary.vesting.Window;

/**
 * When the pieces of a pool are away, as numbers: the same question as {@link Access} answers,
 * asked of every piece for every need. Who is away at a moment is written down once for all moments
 * between which nothing changes; one by one are looked at only absences that end or begin within a
 * journey of the window.
 */
final class Absences {

  private record Absence(int piece, long from, long until) {}

  private final Journeys journeys;
  private final int[] homes;
  private final Absence[] byFrom;
  private final Absence[] byUntil;
  private final long[] froms;
  private final long[] untils;

  /** Every moment at which an absence begins or ends, in order. */
  private final long[] changes;

  /** The pieces away from each of these moments to the next. */
  private final BitSet[] away;

  /**
   * @param pieces by their places in the pool
   */
  Absences(List<Piece> pieces, Journeys journeys) {
    this.journeys = journeys;
    this.homes = pieces.stream().mapToInt(piece -> journeys.place(piece.home())).toArray();
    List<Absence> all = new ArrayList<>();
    for (int place = 0; place < pieces.size(); place++) {
      for (Away time : pieces.get(place).away()) {
        all.add(new Absence(place, Seconds.floor(time.from()), Seconds.ceiling(time.until())));
      }
    }
    this.byFrom = sorted(all, Absence::from);
    this.byUntil = sorted(all, Absence::until);
    this.froms = Stream.of(byFrom).mapToLong(Absence::from).toArray();
    this.untils = Stream.of(byUntil).mapToLong(Absence::until).toArray();
    this.changes =
        LongStream.concat(LongStream.of(froms), LongStream.of(untils))
            .sorted()
            .distinct()
            .toArray();
    this.away = away();
  }

  /**
   * Takes out the pieces that are away for all or a part of a window, or too shortly before or
   * after it for the way to the church and back.
   *
   * @param pieces that can come to the church
   */
  void takeOut(BitSet pieces, ChurchId church, Window window) {
    int there = journeys.place(church);
    long setOut = Seconds.floor(window.setOut());
    long cleared = Seconds.ceiling(window.cleared());
    if (setOut == cleared || !journeys.areComplete()) {
      takeOut(pieces, byFrom, 0, byFrom.length, there, setOut, cleared);
      return;
    }
    int last = first(changes, setOut + 1) - 1;
    if (last >= 0) {
      pieces.andNot(away[last]);
    }
    long longest = journeys.longest();
    int beginning = first(froms, setOut + 1);
    takeOut(pieces, byFrom, beginning, first(froms, cleared + longest), there, setOut, cleared);
    int ending = first(untils, setOut - longest);
    takeOut(pieces, byUntil, ending, first(untils, setOut + 1), there, setOut, cleared);
  }

  private void takeOut(
      BitSet pieces, Absence[] all, int from, int to, int there, long setOut, long cleared) {
    for (int at = from; at < to; at++) {
      if (pieces.get(all[at].piece()) && isInTheWay(all[at], there, setOut, cleared)) {
        pieces.clear(all[at].piece());
      }
    }
  }

  private boolean isInTheWay(Absence one, int there, long setOut, long cleared) {
    int home = homes[one.piece()];
    boolean atHome = home < 0 || home == there;
    long coming = atHome ? 0 : journeys.seconds(home, there);
    long going = atHome ? 0 : journeys.seconds(there, home);
    return one.until() + coming > setOut && cleared + going > one.from();
  }

  private BitSet[] away() {
    BitSet[] all = new BitSet[changes.length];
    int[] open = new int[homes.length];
    BitSet now = new BitSet();
    int begun = 0;
    int ended = 0;
    for (int at = 0; at < changes.length; at++) {
      for (; begun < froms.length && froms[begun] == changes[at]; begun++) {
        open[byFrom[begun].piece()]++;
        now.set(byFrom[begun].piece());
      }
      for (; ended < untils.length && untils[ended] == changes[at]; ended++) {
        int piece = byUntil[ended].piece();
        open[piece]--;
        now.set(piece, open[piece] > 0);
      }
      all[at] = (BitSet) now.clone();
    }
    return all;
  }

  /** How many of the moments, in order, are before one. */
  private static int first(long[] moments, long moment) {
    int low = 0;
    int high = moments.length;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (moments[middle] < moment) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }

  private static Absence[] sorted(List<Absence> all, ToLongFunction<Absence> moment) {
    return all.stream().sorted(Comparator.comparingLong(moment)).toArray(Absence[]::new);
  }
}
