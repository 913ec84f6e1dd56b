package vestiary.planning;

import static vestiary.web.Picture.clock;
import static vestiary.web.Picture.rounded;
import static vestiary.web.Picture.widthOf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import vestiary.calendar.Colour;

/**
 * The proof of a shortage, to be counted by hand: the needs that no two of which one piece could
 * serve, above; the pieces that could serve any of them, below. Times are minutes since the
 * midnight that began the day, on the clock of the cluster.
 */
public final class CountPicture {

  private static final int WIDTH = 460;
  private static final int RIGHT = 416;
  private static final int ROW = 46;
  private static final int HEAD = 27;
  private static final int NAMES = 40;

  private final Count count;
  private final double left;
  private final int from;
  private final int to;

  private CountPicture(Count count) {
    this.count = count;
    this.left = rounded(NAMES + 14 + Math.max(70, widestName()));
    this.from = times().min().orElseThrow();
    this.to = times().max().orElseThrow();
  }

  /** Draws the count; {@link Drawing#NONE} if there are no needs to count. */
  public static Drawing of(Count count) {
    return count.needs().isEmpty() ? Drawing.NONE : new CountPicture(count).draw();
  }

  /**
   * @param title the picture in one sentence, for those who hear the page
   * @param at the moment to count at, when all needs run at once; negative if there is none
   * @param needsTitle for example "White chasubles needed"
   * @param needed for example "3 needed"
   * @param piecesTitle for example "White sets at Saint Anne"
   * @param there for example "2 there"
   * @param caption what the lines and bars mean here
   */
  public record Count(
      String title,
      int at,
      String needsTitle,
      String needed,
      List<Need> needs,
      String piecesTitle,
      String there,
      List<Piece> pieces,
      String caption) {
    public Count {
      needs = List.copyOf(needs);
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * @param who for example "Tarnwick"
   * @param words on the bar, for example "at the altar"
   */
  public record Need(
      String who, Colour colour, int setOut, int start, int end, int putAway, String words) {}

  /**
   * @param counts whether it can serve; if not, it is drawn dashed and crossed and has no number
   * @param words for example "in the cupboard" or "at the cleaner until 11 December"
   */
  public record Piece(String code, Colour colour, boolean counts, String words) {}

  /** Ready coordinates; an empty list of needs where there is nothing to draw. */
  public record Drawing(
      String title,
      String caption,
      int width,
      int height,
      double left,
      int right,
      String needsTitle,
      String needed,
      List<NeedBar> needs,
      int piecesY,
      String piecesTitle,
      String there,
      List<PieceBar> pieces,
      List<Tick> ticks,
      List<Tick> moment) {

    public static final Drawing NONE =
        new Drawing(
            "", "", WIDTH, 0, 0, RIGHT, "", "", List.of(), 0, "", "", List.of(), List.of(),
            List.of());

    /** Where the time lines end and their words begin. */
    public int foot() {
      return height - 24;
    }
  }

  public record NeedBar(
      int number,
      int y,
      String who,
      String colour,
      double setOut,
      double x,
      double width,
      double putAway,
      double wordsX,
      String words) {}

  public record PieceBar(
      String number, int y, String code, String colour, boolean counts, double x, String words) {
    public double wordsX() {
      return rounded(x + 14);
    }
  }

  public record Tick(double x, String clock) {}

  private Drawing draw() {
    List<NeedBar> needs =
        IntStream.range(0, count.needs().size())
            .mapToObj(i -> needBar(i + 1, count.needs().get(i)))
            .toList();
    int piecesY = HEAD + 38 + ROW * needs.size() + 8;
    int height = piecesY + 8 + ROW * count.pieces().size() + 38;
    return new Drawing(
        count.title(),
        count.caption(),
        WIDTH,
        height,
        left,
        RIGHT,
        count.needsTitle(),
        count.needed(),
        needs,
        piecesY,
        count.piecesTitle(),
        count.there(),
        pieces(piecesY),
        ticks(),
        moment());
  }

  private NeedBar needBar(int number, Need need) {
    double x = x(need.start());
    return new NeedBar(
        number,
        HEAD + 41 + ROW * (number - 1),
        need.who(),
        need.colour().id(),
        x(need.setOut()),
        x,
        rounded(x(need.end()) - x),
        x(need.putAway()),
        rounded(Math.max(x, momentX()) + 14),
        need.words());
  }

  private List<PieceBar> pieces(int top) {
    List<PieceBar> bars = new ArrayList<>();
    int counted = 0;
    for (Piece piece : count.pieces()) {
      counted += piece.counts() ? 1 : 0;
      bars.add(
          new PieceBar(
              piece.counts() ? String.valueOf(counted) : "",
              top + 31 + ROW * bars.size(),
              piece.code(),
              piece.colour().id(),
              piece.counts(),
              count.at() < 0 ? left : momentX(),
              piece.words()));
    }
    return bars;
  }

  private List<Tick> ticks() {
    return IntStream.rangeClosed((from + 59) / 60, to / 60)
        .mapToObj(hour -> new Tick(x(hour * 60), clock(hour * 60)))
        .filter(tick -> Math.abs(tick.x() - momentX()) > 44)
        .toList();
  }

  private List<Tick> moment() {
    return count.at() < 0 ? List.of() : List.of(new Tick(momentX(), clock(count.at())));
  }

  private double momentX() {
    return count.at() < 0 ? -WIDTH : x(count.at());
  }

  private double x(int minutes) {
    double share = (minutes - from) / (double) Math.max(1, to - from);
    return rounded(left + 8 + share * (RIGHT - 16 - left));
  }

  private IntStream times() {
    return count.needs().stream().flatMapToInt(n -> IntStream.of(n.setOut(), n.putAway()));
  }

  private double widestName() {
    return Stream.concat(
            count.needs().stream().map(Need::who), count.pieces().stream().map(Piece::code))
        .mapToDouble(name -> widthOf(name))
        .max()
        .orElse(0);
  }
}
