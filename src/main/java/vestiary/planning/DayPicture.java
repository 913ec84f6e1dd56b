package vestiary.planning;

import static vestiary.web.Picture.clock;
import static vestiary.web.Picture.rounded;
import static vestiary.web.Picture.widthOf;

import io.quarkus.qute.RawString;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Colour;
import vestiary.web.ClashMark;
import vestiary.web.Hatching;
import vestiary.web.Outline;

/**
 * The graphic timetable of a day: churches as lines, time across, a Mass as a bar in its colour, a
 * journey as a slope, as on a nineteenth-century railway sheet. All times are minutes since the
 * midnight that began the day, on the clock of the cluster; what ends after the next midnight
 * counts on past 1440.
 */
public final class DayPicture {

  private static final int WIDTH = 1190;
  private static final int ROW = 90;
  private static final int TOP = 74;
  private static final int BAR = 24;
  private static final int LETTERS = 18;
  private static final int NARROWEST_MARGIN = 150;
  private static final int GAP = 20;
  private static final int HALF_HOUR = 30;

  /** Below one church's Masses and above the next one's clashes. */
  private static final int BETWEEN = 52;

  private final List<Church> churches;
  private final List<Journey> journeys;
  private final double left;
  private final int from;
  private final int to;

  private DayPicture(List<Church> churches, List<Journey> journeys) {
    this.churches = List.copyOf(churches);
    this.journeys = List.copyOf(journeys);
    this.left = margin(churches);
    this.from = times().min().orElse(0) - HALF_HOUR;
    this.to = times().max().orElse(0) + HALF_HOUR;
  }

  /**
   * Draws the day; {@link Drawing#NONE} if no church has a Mass.
   *
   * @param churches from the top, each with its Masses in any order
   */
  public static Drawing of(List<Church> churches, List<Journey> journeys) {
    boolean quiet = churches.stream().allMatch(c -> c.masses().isEmpty());
    return quiet ? Drawing.NONE : new DayPicture(churches, journeys).draw();
  }

  public record Church(String name, String place, List<Mass> masses) {
    public Church {
      masses = List.copyOf(masses);
    }
  }

  /**
   * @param words after the time, for example "confirmation"; may be empty
   * @param clashes each with a few words, for example "two red short"
   */
  public record Mass(
      int setOut,
      int start,
      int end,
      int putAway,
      Colour colour,
      String words,
      List<Said> clashes) {
    public Mass {
      clashes = List.copyOf(clashes);
    }
  }

  public record Said(ClashMark mark, String words) {}

  /**
   * @param from where in the list of churches it begins, from 0
   * @param words for example "Ilverton, 12 min"
   * @param minister whether a minister makes it (unbroken), or a set alone (broken)
   */
  public record Journey(
      int from, int to, int departs, int arrives, String words, boolean minister) {}

  /** Ready coordinates; an empty list of rows where there is nothing to draw. */
  public record Drawing(
      int width, int height, double left, List<Hour> hours, List<Row> rows, List<Slope> slopes) {

    public static final Drawing NONE = new Drawing(WIDTH, 0, 0, List.of(), List.of(), List.of());
  }

  public record Hour(double x, String clock) {}

  public record Row(int y, String name, String place, List<Bar> bars, List<Flag> flags) {
    public int below() {
      return y + LETTERS - 1;
    }
  }

  public record Bar(
      double setOut,
      double x,
      double putAway,
      RawString shape,
      int wordsY,
      String clock,
      String words) {}

  /** A clash above its bar. */
  public record Flag(String severity, double x, int y, double wordsX, int wordsY, String words) {}

  public record Slope(
      double x1,
      int y1,
      double x2,
      int y2,
      double wordsX,
      int wordsY,
      String words,
      boolean minister) {}

  private Drawing draw() {
    List<Row> rows = IntStream.range(0, churches.size()).mapToObj(this::row).toList();
    int height = TOP + ROW * (rows.size() - 1) + 60;
    return new Drawing(
        WIDTH, height, left, hours(), rows, journeys.stream().map(this::slope).toList());
  }

  private List<Hour> hours() {
    int first = (from + 59) / 60;
    int step = (to - from) > 14 * 60 ? 2 : 1;
    return IntStream.rangeClosed(first, to / 60)
        .filter(hour -> (hour - first) % step == 0)
        .mapToObj(hour -> new Hour(x(hour * 60), clock(hour * 60)))
        .toList();
  }

  private Row row(int index) {
    Church church = churches.get(index);
    int y = TOP + index * ROW;
    List<Mass> inOrder =
        church.masses().stream().sorted(Comparator.comparing(Mass::start)).toList();
    return new Row(y, church.name(), church.place(), bars(inOrder, y), flags(inOrder, y));
  }

  private List<Bar> bars(List<Mass> masses, int y) {
    List<Bar> bars = new ArrayList<>();
    Shelf shelf = new Shelf();
    for (Mass mass : masses) {
      double x = x(mass.start());
      double width = Math.max(x(mass.end()) - x, 4);
      Outline outline = Outline.bar(x, y - BAR / 2.0, width, BAR);
      String clock = clock(mass.start());
      int level = shelf.place(x, widthOf(clock + " " + mass.words()));
      bars.add(
          new Bar(
              x(mass.setOut()),
              x,
              x(mass.putAway()),
              new RawString(Hatching.filled(mass.colour(), outline)),
              y + 30 + level * LETTERS,
              clock,
              mass.words()));
    }
    return bars;
  }

  private List<Flag> flags(List<Mass> masses, int y) {
    List<Flag> flags = new ArrayList<>();
    Shelf shelf = new Shelf();
    for (Mass mass : masses) {
      for (Said clash : mass.clashes()) {
        double x = x(mass.start());
        int level = shelf.place(x, GAP + widthOf(clash.words()));
        int middle = y - 26 - level * LETTERS;
        flags.add(
            new Flag(
                clash.mark().severity(),
                x,
                middle - 8,
                rounded(x + GAP),
                middle + 5,
                clash.words()));
      }
    }
    return flags;
  }

  private Slope slope(Journey journey) {
    double x1 = x(journey.departs());
    double x2 = x(journey.arrives());
    int y1 = TOP + journey.from() * ROW;
    int y2 = TOP + journey.to() * ROW;
    int wordsY = Math.min(y1, y2) + BETWEEN;
    double along = y1 == y2 ? 0 : (wordsY - y1) / (double) (y2 - y1);
    double wordsX = rounded(x1 + along * (x2 - x1) - 9);
    return new Slope(x1, y1, x2, y2, wordsX, wordsY, journey.words(), journey.minister());
  }

  private double x(int minutes) {
    double share = (minutes - from) / (double) (to - from);
    return rounded(left + share * (WIDTH - 10 - left));
  }

  private IntStream times() {
    Stream<Mass> masses = churches.stream().flatMap(c -> c.masses().stream());
    return IntStream.concat(
        masses.flatMapToInt(m -> IntStream.of(m.setOut(), m.putAway())),
        journeys.stream().flatMapToInt(j -> IntStream.of(j.departs(), j.arrives())));
  }

  private static double margin(List<Church> churches) {
    double widest =
        churches.stream()
            .mapToDouble(c -> Math.max(widthOf(c.name()), widthOf(c.place())))
            .max()
            .orElse(0);
    return rounded(Math.max(NARROWEST_MARGIN, widest + GAP));
  }

  /** Keeps words that stand near each other on one line or the next. */
  private static final class Shelf {

    private final double[] takenTo = {0, 0};

    int place(double x, double width) {
      int level = x >= takenTo[0] ? 0 : 1;
      takenTo[level] = Math.max(takenTo[level], x + width);
      return level;
    }
  }
}
