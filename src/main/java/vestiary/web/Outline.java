package vestiary.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The closed edge of a drawn thing, in the units of its picture, as straight stretches short enough
 * to pass for the curves they stand for. The y axis points down, as in SVG.
 */
public record Outline(List<Point> corners) {

  private static final int STRETCHES = 12;

  /** The small ribbon that stands beside a colour's name: 14 wide, 21 high. */
  static final Outline RIBBON = tail(21);

  /** The ribbon that hangs from the rule above a day: 14 wide, 34 high. */
  static final Outline LONG_RIBBON = tail(34);

  /** The shorter one of a day with a second lawful colour: 14 wide, 24 high. */
  static final Outline SHORT_RIBBON = tail(24);

  /** A chasuble laid out, seen from behind: 24 wide, 26 high. */
  static final Outline CHASUBLE = chasuble();

  public Outline {
    corners = List.copyOf(corners);
    if (corners.size() < 3) {
      throw new IllegalArgumentException("An outline has three corners or more: " + corners);
    }
  }

  /** A point of a picture. */
  public record Point(double x, double y) {}

  /** An upright rectangle. */
  public static Outline bar(double x, double y, double width, double height) {
    return new Outline(
        List.of(
            new Point(x, y),
            new Point(x + width, y),
            new Point(x + width, y + height),
            new Point(x, y + height)));
  }

  /** The same shape with its edge moved in by {@code by} at each side. */
  Outline within(double by) {
    Point middle = middle();
    double across = 1 - 2 * by / width();
    double down = 1 - 2 * by / height();
    return new Outline(
        corners.stream()
            .map(
                p ->
                    new Point(
                        middle.x + (p.x - middle.x) * across, middle.y + (p.y - middle.y) * down))
            .toList());
  }

  boolean contains(Point point) {
    boolean inside = false;
    for (int i = 0; i < corners.size(); i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % corners.size());
      boolean passes = (a.y > point.y) != (b.y > point.y);
      if (passes && point.x < a.x + (b.x - a.x) * (point.y - a.y) / (b.y - a.y)) {
        inside = !inside;
      }
    }
    return inside;
  }

  Point middle() {
    return new Point(left() + width() / 2, top() + height() / 2);
  }

  double left() {
    return corners.stream().mapToDouble(Point::x).min().orElseThrow();
  }

  double top() {
    return corners.stream().mapToDouble(Point::y).min().orElseThrow();
  }

  double width() {
    return corners.stream().mapToDouble(Point::x).max().orElseThrow() - left();
  }

  double height() {
    return corners.stream().mapToDouble(Point::y).max().orElseThrow() - top();
  }

  /** The edge as SVG path commands. */
  String path() {
    StringBuilder path = new StringBuilder();
    for (Point corner : corners) {
      path.append(path.isEmpty() ? 'M' : 'L').append(written(corner));
    }
    return path.append('Z').toString();
  }

  static String written(Point point) {
    return written(point.x) + " " + written(point.y);
  }

  static String written(double length) {
    String text = String.format(Locale.ROOT, "%.1f", length);
    String bare = text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    return bare.equals("-0") ? "0" : bare;
  }

  private static Outline tail(double height) {
    return new Outline(
        List.of(
            new Point(.5, .5),
            new Point(13.5, .5),
            new Point(13.5, height - .5),
            new Point(7, height - 5),
            new Point(.5, height - .5)));
  }

  private static Outline chasuble() {
    List<Point> edge = new ArrayList<>();
    curve(
        edge, new Point(8.6, 1.2), new Point(9.6, 4.6), new Point(14.4, 4.6), new Point(15.4, 1.2));
    curve(edge, new Point(19, 2.4), new Point(22.4, 8.5), new Point(23.4, 15), new Point(23, 21.2));
    curve(
        edge, new Point(23, 21.2), new Point(19.6, 24), new Point(15.8, 25.2), new Point(12, 25.2));
    curve(edge, new Point(12, 25.2), new Point(8.2, 25.2), new Point(4.4, 24), new Point(1, 21.2));
    curve(edge, new Point(1, 21.2), new Point(.6, 15), new Point(1.6, 8.5), new Point(5, 2.4));
    return new Outline(edge);
  }

  private static void curve(List<Point> edge, Point from, Point pull, Point pullBack, Point to) {
    for (int i = 0; i <= STRETCHES; i++) {
      double t = (double) i / STRETCHES;
      double u = 1 - t;
      edge.add(
          new Point(
              u * u * u * from.x
                  + 3 * u * u * t * pull.x
                  + 3 * u * t * t * pullBack.x
                  + t * t * t * to.x,
              u * u * u * from.y
                  + 3 * u * u * t * pull.y
                  + 3 * u * t * t * pullBack.y
                  + t * t * t * to.y));
    }
  }
}
