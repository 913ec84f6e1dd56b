package vestiary.calendar;

import java.util.Locale;

/** The one sentence that says which celebration a day keeps, in which colour, and why. */
final class DayReasons {

  private DayReasons() {}

  static String of(DayChoice choice) {
    Celebration kept = choice.kept();
    return kept.name().english() + why(choice) + " " + colour(kept);
  }

  private static String why(DayChoice choice) {
    Celebration kept = choice.kept();
    if (choice.transferred()) return " is kept on this day, transferred (UNLY 60);";
    if (!choice.omitted().isEmpty()) {
      return " is kept, as it stands higher than what else falls on this day ("
          + kept.precedence().source()
          + ");";
    }
    return choice.celebrations().size() > 1
        ? " is kept unless another is chosen (" + kept.precedence().source() + ");"
        : " is kept (" + kept.precedence().source() + ");";
  }

  private static String colour(Celebration kept) {
    String reason = kept.colourReason();
    return reason.substring(0, 1).toLowerCase(Locale.ROOT) + reason.substring(1);
  }
}
