package vestiary.planning;

import static vestiary.web.Picture.clock;
import static vestiary.web.Picture.rounded;
import static vestiary.web.Picture.widthOf;

import io.quarkus.qute.RawString;
import java.util.List;
import vestiary.calendar.Colour;
import vestiary.web.Hatching;
import vestiary.web.Outline;

/**
 * The proof that somebody or something cannot be there in time: two churches as lines, the journey
 * a slope, and the red line at which it was due. Times are minutes since the midnight that began
 * the day, on the clock of the cluster.
 */
public final class JourneyPicture {

  private static final int WIDTH = 460;
  private static final int HEIGHT = 256;
  private static final int UPPER = 90;
  private static final int LOWER = 200;
  private static final int BAR = 24;
  private static final int END = 20;

  private final Late late;
  private final double left;

  private JourneyPicture(Late late) {
    this.late = late;
    double widest =
        List.of(
                late.first().church(), late.first().place(),
                late.second().church(), late.second().place())
            .stream()
            .mapToDouble(name -> widthOf(name))
            .max()
            .orElse(0);
    this.left = rounded(Math.min(widest + END, WIDTH / 2.0));
  }

  /** Draws the journey. */
  public static Drawing of(Late late) {
    return new JourneyPicture(late).draw();
  }

  /**
   * @param title the picture in one sentence, for those who hear the page
   * @param leaves when the road is open: the first Mass over, the vestments cleared
   * @param due when it should be there: set-out, or the start for a minister
   * @param dueWords for example "due 10:00"
   * @param arrivesWords for example "there at 10:11"
   * @param caption for example "Cleared by 09:45, then 26 minutes on the road: eleven late."
   */
  public record Late(
      String title,
      Stop first,
      Stop second,
      int leaves,
      int arrives,
      int due,
      String dueWords,
      String arrivesWords,
      String caption) {}

  public record Stop(String church, String place, Colour colour, int start, int end) {}

  /** Ready coordinates; no stops where there is nothing to draw. */
  public record Drawing(
      String title,
      String caption,
      int width,
      int height,
      double left,
      List<Line> stops,
      double leavesX,
      double arrivesX,
      double dueX,
      String dueWords,
      String arrivesWords,
      boolean arrivesWordsLeft) {

    public static final Drawing NONE =
        new Drawing("", "", WIDTH, 0, 0, List.of(), 0, 0, 0, "", "", false);

    public int upper() {
      return UPPER;
    }

    public int lower() {
      return LOWER;
    }
  }

  public record Line(int y, String church, String place, double x, RawString bar, String clock) {
    public int below() {
      return y + 17;
    }

    public int clockY() {
      return y - 20;
    }
  }

  private Drawing draw() {
    double arrives = x(late.arrives());
    return new Drawing(
        late.title(),
        late.caption(),
        WIDTH,
        HEIGHT,
        left,
        List.of(line(late.first(), UPPER), line(late.second(), LOWER)),
        x(late.leaves()),
        arrives,
        x(late.due()),
        late.dueWords(),
        late.arrivesWords(),
        arrives + widthOf(late.arrivesWords()) > WIDTH);
  }

  private Line line(Stop stop, int y) {
    double x = x(stop.start());
    Outline outline = Outline.bar(x, y - BAR / 2.0, Math.max(x(stop.end()) - x, 4), BAR);
    return new Line(
        y,
        stop.church(),
        stop.place(),
        x,
        new RawString(Hatching.filled(stop.colour(), outline)),
        clock(stop.start()));
  }

  private double x(int minutes) {
    int from = Math.min(late.first().start(), late.due()) - 5;
    int to = Math.max(late.second().end(), late.arrives()) + 5;
    double share = (minutes - from) / (double) (to - from);
    return rounded(left + share * (WIDTH - 4 - left));
  }
}
