package vestiary.calendar;

import java.util.List;
import java.util.Set;

/**
 * Why a celebration has its colour, in one sentence.
 *
 * <p>Source: GIRM 346; "common practice" where it is silent.
 */
final class ColourReasons {

  private ColourReasons() {}

  static String of(List<Colour> colours, Set<Kind> kinds, LocalName name) {
    if (kinds.contains(Kind.DEAD)) return dead(colours);
    if (kinds.contains(Kind.PRAYER_DAY)) return dayOfPrayer(colours);
    return switch (colours.get(0)) {
      case RED -> red(kinds, isOne(name));
      case VIOLET -> violet(colours, kinds);
      case GREEN -> "Green, for Ordinary Time (GIRM 346 c).";
      default -> white(kinds, isOne(name));
    };
  }

  private static String dayOfPrayer(List<Colour> colours) {
    return colours.contains(Colour.WHITE)
        ? "White or violet, by the Mass that is chosen (GIRM 373, for the United States)."
        : "Violet, for a day of prayer and penance (GIRM 373, for the United States).";
  }

  private static String dead(List<Colour> colours) {
    return colours.contains(Colour.WHITE)
        ? "Violet, white or black, for the dead (GIRM 346 d, e, for the United States)."
        : "Violet, or black where that is the custom, for the dead (GIRM 346 d, e).";
  }

  private static String red(Set<Kind> kinds, boolean one) {
    if (kinds.contains(Kind.HOLY_SPIRIT)) return "Red, for Pentecost (GIRM 346 b).";
    if (kinds.contains(Kind.PASSION) || kinds.contains(Kind.LORD)) {
      return "Red, for the Passion of the Lord (GIRM 346 b).";
    }
    if (kinds.contains(Kind.APOSTLE)) {
      return one
          ? "Red, for the feast of an apostle (GIRM 346 b)."
          : "Red, for the feast of apostles (GIRM 346 b).";
    }
    if (kinds.contains(Kind.EVANGELIST)) {
      return "Red, for the feast of an evangelist (GIRM 346 b).";
    }
    return one ? "Red, for a martyr (GIRM 346 b)." : "Red, for martyrs (GIRM 346 b).";
  }

  private static String violet(List<Colour> colours, Set<Kind> kinds) {
    String season = kinds.contains(Kind.ADVENT) ? "Advent" : "Lent";
    return colours.contains(Colour.ROSE)
        ? "Violet, for " + season + "; rose may be worn where it is the custom (GIRM 346 d, f)."
        : "Violet, for " + season + " (GIRM 346 d).";
  }

  private static String white(Set<Kind> kinds, boolean one) {
    if (kinds.contains(Kind.EASTER)) return "White, for Easter Time (GIRM 346 a).";
    if (kinds.contains(Kind.CHRISTMAS)) return "White, for Christmas Time (GIRM 346 a).";
    if (kinds.contains(Kind.LORD)) {
      return "White, for a celebration of the Lord other than of his Passion (GIRM 346 a).";
    }
    if (kinds.contains(Kind.BVM)) return "White, for the Blessed Virgin Mary (GIRM 346 a).";
    if (kinds.contains(Kind.ANGELS)) return "White, for the holy angels (GIRM 346 a).";
    if (kinds.contains(Kind.ALL_SAINTS)) return "White, for All Saints (GIRM 346 a).";
    if (kinds.contains(Kind.DEDICATION)) {
      return "White, for the dedication of a church (common practice).";
    }
    if (kinds.contains(Kind.CIVIL_DAY)) {
      return "White, for this Mass of the country (Roman Missal, proper of the United States).";
    }
    if (kinds.contains(Kind.APOSTLE) || kinds.contains(Kind.JOHN_THE_BAPTIST)) {
      return "White, since the norm names this day (GIRM 346 a).";
    }
    return one
        ? "White, for a saint who was not a martyr (GIRM 346 a)."
        : "White, for saints who were not martyrs (GIRM 346 a).";
  }

  private static boolean isOne(LocalName name) {
    String english = name.english();
    boolean singular = english.startsWith("Saint ") || english.startsWith("Blessed ");
    return singular && !english.contains("Companions") && !english.contains("Martyrs");
  }
}
