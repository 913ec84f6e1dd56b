package vestiary.web;

import static vestiary.web.Outline.written;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import vestiary.calendar.Colour;
import vestiary.web.Outline.Point;

/**
 * Colours that read without colour: real lines, cut to the shape they fill, since patterns and
 * gradients turn to grey in print.
 *
 * <p>Source: Silvestro Petra Sancta, "Tesserae gentilitiae", Rome 1638, the open convention of
 * heraldry (left and right as the viewer sees): white plain, gold dots, red upright lines, green
 * from the upper left to the lower right, violet from the upper right to the lower left, black
 * crossed. Rose (violet's lines, broken) and silver (plain with a second edge) are this project's
 * own.
 */
public final class Hatching {

  private static final double APART = 3.25;
  private static final double DOTS_DOWN = 2;
  private static final double EDGE = .55;
  private static final double SECOND_EDGE = 2.2;

  private static final Point UPRIGHT = new Point(0, 1);
  private static final Point LEVEL = new Point(1, 0);
  private static final Point FALLING_RIGHT = new Point(Math.sqrt(.5), Math.sqrt(.5));
  private static final Point FALLING_LEFT = new Point(-Math.sqrt(.5), Math.sqrt(.5));

  private static final Map<Colour, List<Point>> DIRECTIONS =
      Map.of(
          Colour.WHITE, List.of(),
          Colour.SILVER, List.of(),
          Colour.GOLD, List.of(),
          Colour.RED, List.of(UPRIGHT),
          Colour.GREEN, List.of(FALLING_RIGHT),
          Colour.VIOLET, List.of(FALLING_LEFT),
          Colour.ROSE, List.of(FALLING_LEFT),
          Colour.BLACK, List.of(UPRIGHT, LEVEL));

  private static final String SYMBOLS = drawSymbols();

  private Hatching() {}

  /**
   * One SVG symbol for each colour and shape ({@code ribbon-red}, {@code long-red}, {@code
   * short-red}, {@code chasuble-red}), for one hidden SVG at the head of a page.
   */
  public static String symbols() {
    return SYMBOLS;
  }

  /** The colour laid into the outline, edge included, as SVG elements. */
  public static String filled(Colour colour, Outline outline) {
    return "<path class=\"t-%s\" d=\"%s\"/>".formatted(colour.id(), outline.path())
        + hatched(colour, outline)
        + "<path class=\"edge\" d=\"%s\"/>".formatted(outline.path());
  }

  /** The hatching alone as SVG path commands, empty for white: each stroke lies in the outline. */
  static String strokes(Colour colour, Outline outline) {
    StringBuilder path = new StringBuilder();
    for (Point direction : DIRECTIONS.get(colour)) {
      lines(direction, outline).forEach(path::append);
    }
    return path.toString();
  }

  private static String hatched(Colour colour, Outline outline) {
    return switch (colour) {
      case WHITE -> "";
      case SILVER ->
          "<path class=\"second-edge\" d=\"%s\"/>".formatted(outline.within(SECOND_EDGE).path());
      case GOLD -> "<path class=\"dots\" d=\"%s\"/>".formatted(dots(outline));
      case ROSE -> "<path class=\"cut broken\" d=\"%s\"/>".formatted(strokes(colour, outline));
      default -> "<path class=\"cut\" d=\"%s\"/>".formatted(strokes(colour, outline));
    };
  }

  private static List<String> lines(Point direction, Outline outline) {
    Point normal = new Point(-direction.y(), direction.x());
    double middle = along(normal, outline.middle());
    double reach = Math.hypot(outline.width(), outline.height()) / 2;
    int count = (int) Math.floor(reach / APART);
    List<String> strokes = new ArrayList<>();
    for (int i = -count; i <= count; i++) {
      strokes.addAll(cut(direction, normal, middle + i * APART, outline));
    }
    return strokes;
  }

  /** The stretches of one straight line that lie inside: it enters and leaves the shape in turn. */
  private static List<String> cut(Point direction, Point normal, double distance, Outline outline) {
    List<Point> crossings = crossings(normal, distance, outline);
    crossings.sort(Comparator.comparingDouble(p -> along(direction, p)));
    List<String> strokes = new ArrayList<>();
    for (int i = 0; i + 1 < crossings.size(); i += 2) {
      strokes.add("M" + written(crossings.get(i)) + "L" + written(crossings.get(i + 1)));
    }
    return strokes;
  }

  private static List<Point> crossings(Point normal, double distance, Outline outline) {
    List<Point> corners = outline.corners();
    List<Point> crossings = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      double before = along(normal, a) - distance;
      double after = along(normal, b) - distance;
      if (before < 0 != after < 0) {
        double share = before / (before - after);
        crossings.add(new Point(a.x() + share * (b.x() - a.x()), a.y() + share * (b.y() - a.y())));
      }
    }
    return crossings;
  }

  private static double along(Point direction, Point point) {
    return direction.x() * point.x() + direction.y() * point.y();
  }

  /** Strokes of no length: round caps make them dots. */
  private static String dots(Outline outline) {
    Outline room = outline.within(EDGE * 2);
    StringBuilder path = new StringBuilder();
    int row = 0;
    for (double y = outline.top() + EDGE * 2;
        y < outline.top() + outline.height();
        y += DOTS_DOWN) {
      double first = outline.left() + EDGE * 2 + (row++ % 2) * APART / 2;
      for (double x = first; x < outline.left() + outline.width(); x += APART) {
        if (room.contains(new Point(x, y))) {
          path.append('M').append(written(new Point(x, y))).append("h0");
        }
      }
    }
    return path.toString();
  }

  private static String drawSymbols() {
    StringBuilder symbols = new StringBuilder();
    for (Colour colour : Colour.values()) {
      symbols.append(symbol("ribbon", "14 21", colour, Outline.RIBBON));
      symbols.append(symbol("long", "14 34", colour, Outline.LONG_RIBBON));
      symbols.append(symbol("short", "14 24", colour, Outline.SHORT_RIBBON));
      symbols.append(symbol("chasuble", "24 26", colour, Outline.CHASUBLE));
    }
    return symbols
        .append("<symbol id=\"chasuble-away\" viewBox=\"0 0 24 26\"><path class=\"away\" d=\"")
        .append(Outline.CHASUBLE.path())
        .append("\"/></symbol>")
        .toString();
  }

  private static String symbol(String shape, String box, Colour colour, Outline outline) {
    return "<symbol id=\"%s-%s\" viewBox=\"0 0 %s\">%s</symbol>"
        .formatted(shape, colour.id(), box, filled(colour, outline));
  }
}
