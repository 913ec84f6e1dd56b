package vestiary.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import vestiary.calendar.Colour;
import vestiary.web.Outline.Point;

/** Directions: Petra Sancta's convention of 1638, as heraldry still uses it. */
class HatchingTest {

  private static final Outline SQUARE = Outline.bar(0, 0, 20, 20);

  @Test
  void red_is_upright() {
    List<double[]> strokes = strokes(Colour.RED, SQUARE);

    assertFalse(strokes.isEmpty());
    strokes.forEach(s -> assertEquals(s[0], s[2], .05));
  }

  @Test
  void green_falls_from_the_upper_left_to_the_lower_right() {
    List<double[]> strokes = strokes(Colour.GREEN, SQUARE);

    assertFalse(strokes.isEmpty());
    strokes.forEach(s -> assertEquals(s[2] - s[0], s[3] - s[1], .25));
  }

  @Test
  void violet_falls_from_the_upper_right_to_the_lower_left() {
    List<double[]> strokes = strokes(Colour.VIOLET, SQUARE);

    assertFalse(strokes.isEmpty());
    strokes.forEach(s -> assertEquals(s[2] - s[0], s[1] - s[3], .25));
  }

  @Test
  void black_is_crossed_upright_and_level() {
    List<double[]> strokes = strokes(Colour.BLACK, SQUARE);

    long upright = strokes.stream().filter(s -> Math.abs(s[0] - s[2]) < .05).count();
    long level = strokes.stream().filter(s -> Math.abs(s[1] - s[3]) < .05).count();
    assertTrue(upright > 0 && level > 0);
    assertEquals(strokes.size(), upright + level);
  }

  @Test
  void white_is_plain_gold_is_dots_and_silver_has_a_second_edge() {
    assertEquals("", Hatching.strokes(Colour.WHITE, SQUARE));
    assertFalse(Hatching.filled(Colour.WHITE, SQUARE).contains("cut"));
    assertTrue(Hatching.filled(Colour.GOLD, SQUARE).contains("class=\"dots\""));
    assertTrue(Hatching.filled(Colour.SILVER, SQUARE).contains("class=\"second-edge\""));
  }

  @Test
  void rose_is_the_line_of_violet_broken() {
    assertEquals(Hatching.strokes(Colour.VIOLET, SQUARE), Hatching.strokes(Colour.ROSE, SQUARE));
    assertTrue(Hatching.filled(Colour.ROSE, SQUARE).contains("class=\"cut broken\""));
  }

  @Test
  void no_stroke_leaves_the_ribbon_not_even_at_its_swallow_tail() {
    for (Colour colour : List.of(Colour.RED, Colour.GREEN, Colour.VIOLET, Colour.BLACK)) {
      for (double[] s : strokes(colour, Outline.RIBBON)) {
        Point middle = new Point((s[0] + s[2]) / 2, (s[1] + s[3]) / 2);
        assertTrue(Outline.RIBBON.contains(middle), () -> colour + " outside at " + middle);
      }
    }
  }

  @Test
  void every_colour_has_its_symbol_in_every_shape() {
    for (Colour colour : Colour.values()) {
      for (String shape : List.of("ribbon", "long", "short", "chasuble")) {
        assertTrue(Hatching.symbols().contains("id=\"" + shape + "-" + colour.id() + "\""));
      }
    }
  }

  private static List<double[]> strokes(Colour colour, Outline outline) {
    return Pattern.compile("M(\\S+) (\\S+?)L(\\S+?) ([-0-9.]+)")
        .matcher(Hatching.strokes(colour, outline))
        .results()
        .map(
            r ->
                new double[] {
                  Double.parseDouble(r.group(1)),
                  Double.parseDouble(r.group(2)),
                  Double.parseDouble(r.group(3)),
                  Double.parseDouble(r.group(4))
                })
        .toList();
  }
}
