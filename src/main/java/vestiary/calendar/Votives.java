package vestiary.calendar;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the norms say of a votive or needs Mass by its subject, given by id.
 *
 * <p>Source: GIRM 347, 375; the Missal's rubrics before the Masses for various needs.
 */
final class Votives {

  /** Celebrations of the mysteries of the Lord's life and of Mary's, never votive. */
  private static final Set<String> MYSTERIES =
      Set.of(
          "nativity-of-the-lord",
          "holy-family",
          "epiphany",
          "epiphany-sunday",
          "baptism-of-the-lord",
          "presentation-of-the-lord",
          "annunciation",
          "palm-sunday",
          "easter-sunday",
          "ascension-thursday",
          "ascension-sunday",
          "pentecost",
          "transfiguration",
          "mary-mother-of-god",
          "visitation",
          "assumption",
          "nativity-of-mary",
          "presentation-of-mary");

  private static final Set<String> RED =
      Set.of(
          "holy-spirit",
          "precious-blood",
          "holy-cross",
          "exaltation-of-the-holy-cross",
          "apostles",
          "apostle",
          "peter",
          "paul",
          "martyr",
          "martyrs");

  private static final Set<String> PENITENTIAL =
      Set.of("war", "war-or-conflict", "famine", "forgiveness-of-sins");

  /** Four Masses that need no order of the bishop on green Sundays and on feasts. */
  private static final Set<String> WITHOUT_ORDER =
      Set.of("pope", "bishop", "christian-unity", "evangelization-of-peoples");

  private Votives() {}

  static boolean isMystery(String id) {
    return MYSTERIES.contains(id);
  }

  static boolean needsNoOrder(String id) {
    return WITHOUT_ORDER.contains(id);
  }

  static boolean isPenitential(String id) {
    return PENITENTIAL.contains(id);
  }

  /** Red for the Spirit, the Passion, apostles and martyrs, otherwise white. */
  static List<Colour> colours(String id, Optional<Celebration> celebration) {
    if (RED.contains(id)) return List.of(Colour.RED);
    return celebration.map(Celebration::colours).orElse(List.of(Colour.WHITE));
  }
}
