package vestiary.plan;

import static vestiary.web.Picture.rounded;
import static vestiary.web.Picture.widthOf;

import io.quarkus.qute.RawString;
import java.util.List;
import java.util.stream.IntStream;
import vestiary.calendar.Colour;
import vestiary.web.Hatching;
import vestiary.web.Outline;

/**
 * One set's week: churches as lines, the days across, a bar where it is worn or held, a slope where
 * it is carried. Times are minutes since the midnight that began the week.
 */
public final class SetWeekPicture {

  private static final int DAYS = 7;
  private static final int MINUTES = 24 * 60;
  private static final int WIDTH = 1190;
  private static final int TOP = 62;
  private static final int ROW = 84;
  private static final int BAR = 22;
  private static final int NARROWEST_BAR = 9;

  private final List<Line> lines;
  private final double left;

  private SetWeekPicture(List<Line> lines) {
    this.lines = List.copyOf(lines);
    this.left =
        rounded(20 + lines.stream().mapToDouble(line -> widthOf(line.name())).max().orElse(0));
  }

  /**
   * A church and when the set is worn or held there.
   *
   * @param name of the church
   * @param lies when it is there, worn or not
   */
  public record Line(String name, String place, List<Lying> lies, List<Stay> stays) {
    public Line {
      lies = List.copyOf(lies);
      stays = List.copyOf(stays);
    }
  }

  public record Lying(int from, int until) {}

  /**
   * @param words for example "18:30"
   */
  public record Stay(int from, int until, Colour colour, String words) {}

  /**
   * A journey from one line to another, both counted from 0.
   *
   * @param carried for example "17:56"
   */
  public record Way(int from, int to, int leave, int arrive, String carried) {}

  /** Ready coordinates. */
  public record Drawing(
      int width, int height, double left, List<Day> days, List<Row> rows, List<Slope> slopes) {

    /** Nothing to draw. */
    public static final Drawing NONE = new Drawing(WIDTH, 0, 0, List.of(), List.of(), List.of());

    public Drawing {
      days = List.copyOf(days);
      rows = List.copyOf(rows);
      slopes = List.copyOf(slopes);
    }
  }

  public record Day(double x, double wordsX, String name) {}

  public record Row(
      int y, int below, String name, String place, List<Stretch> lies, List<Bar> bars) {
    public Row {
      lies = List.copyOf(lies);
      bars = List.copyOf(bars);
    }
  }

  public record Stretch(double x1, double x2) {}

  public record Bar(double x, int wordsY, RawString shape, String words) {}

  public record Slope(
      double x1, int y1, double x2, int y2, double wordsX, int wordsY, String words) {}

  /**
   * Draws the week; {@link Drawing#NONE} if there is no line.
   *
   * @param days names of the seven days, as in "Mon 7"
   */
  public static Drawing of(List<String> days, List<Line> lines, List<Way> ways) {
    return lines.isEmpty() ? Drawing.NONE : new SetWeekPicture(lines).draw(days, ways);
  }

  private Drawing draw(List<String> days, List<Way> ways) {
    return new Drawing(
        WIDTH,
        TOP + ROW * (lines.size() - 1) + 52,
        left,
        IntStream.range(0, DAYS)
            .mapToObj(
                day -> new Day(x(day * MINUTES), rounded(x(day * MINUTES) + 6), days.get(day)))
            .toList(),
        IntStream.range(0, lines.size()).mapToObj(this::row).toList(),
        ways.stream().map(this::slope).toList());
  }

  private Row row(int line) {
    int y = y(line);
    return new Row(
        y,
        y + 19,
        lines.get(line).name(),
        lines.get(line).place(),
        lines.get(line).lies().stream()
            .map(lying -> new Stretch(x(lying.from()), x(lying.until())))
            .toList(),
        lines.get(line).stays().stream().map(stay -> bar(stay, y)).toList());
  }

  private Bar bar(Stay stay, int y) {
    double x = x(stay.from());
    double width = Math.max(NARROWEST_BAR, x(stay.until()) - x);
    return new Bar(
        x,
        y + BAR / 2 + 17,
        new RawString(
            Hatching.filled(stay.colour(), Outline.bar(x, y - BAR / 2.0, rounded(width), BAR))),
        stay.words());
  }

  private Slope slope(Way way) {
    double arrives = x(way.arrive());
    int y1 = y(way.from());
    int y2 = y(way.to());
    return new Slope(
        x(way.leave()),
        y1,
        Math.max(arrives, x(way.leave()) + 3),
        y2,
        rounded(x(way.leave()) - 6),
        (y1 + y2) / 2 + 5,
        way.carried());
  }

  private static int y(int line) {
    return TOP + ROW * line;
  }

  private double x(int minutes) {
    double share = Math.max(0, Math.min(DAYS * MINUTES, minutes)) / (double) (DAYS * MINUTES);
    return rounded(left + share * (WIDTH - left - 10));
  }
}
