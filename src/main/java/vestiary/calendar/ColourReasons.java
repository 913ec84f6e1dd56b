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

  static Reason of(List<Colour> colours, Set<Kind> kinds, LocalName name) {
    if (kinds.contains(Kind.DEAD)) return dead(colours);
    if (kinds.contains(Kind.PRAYER_DAY)) return dayOfPrayer(colours);
    return switch (colours.get(0)) {
      case RED -> red(kinds, isOne(name));
      case VIOLET -> violet(colours, kinds);
      case GREEN -> new Reason(Sentence.of("Green, for Ordinary Time."), "GIRM 346 c");
      default -> white(kinds, isOne(name));
    };
  }

  private static Reason dayOfPrayer(List<Colour> colours) {
    return colours.contains(Colour.WHITE)
        ? new Reason(
            Sentence.of("White or violet, by the Mass that is chosen."),
            "GIRM 373, for the United States")
        : new Reason(
            Sentence.of("Violet, for a day of prayer and penance."),
            "GIRM 373, for the United States");
  }

  private static Reason dead(List<Colour> colours) {
    return colours.contains(Colour.WHITE)
        ? new Reason(
            Sentence.of("Violet, white or black, for the dead."),
            "GIRM 346 d, e, for the United States")
        : new Reason(
            Sentence.of("Violet, or black where that is the custom, for the dead."),
            "GIRM 346 d, e");
  }

  private static Reason red(Set<Kind> kinds, boolean one) {
    if (kinds.contains(Kind.HOLY_SPIRIT))
      return new Reason(Sentence.of("Red, for Pentecost."), "GIRM 346 b");
    if (kinds.contains(Kind.PASSION) || kinds.contains(Kind.LORD)) {
      return new Reason(Sentence.of("Red, for the Passion of the Lord."), "GIRM 346 b");
    }
    if (kinds.contains(Kind.APOSTLE)) {
      return one
          ? new Reason(Sentence.of("Red, for the feast of an apostle."), "GIRM 346 b")
          : new Reason(Sentence.of("Red, for the feast of apostles."), "GIRM 346 b");
    }
    if (kinds.contains(Kind.EVANGELIST)) {
      return new Reason(Sentence.of("Red, for the feast of an evangelist."), "GIRM 346 b");
    }
    return one
        ? new Reason(Sentence.of("Red, for a martyr."), "GIRM 346 b")
        : new Reason(Sentence.of("Red, for martyrs."), "GIRM 346 b");
  }

  private static Reason violet(List<Colour> colours, Set<Kind> kinds) {
    Sentence season = kinds.contains(Kind.ADVENT) ? Sentence.of("Advent") : Sentence.of("Lent");
    return colours.contains(Colour.ROSE)
        ? new Reason(
            Sentence.of("Violet, for %s; rose may be worn where it is the custom.", season),
            "GIRM 346 d, f")
        : new Reason(Sentence.of("Violet, for %s.", season), "GIRM 346 d");
  }

  private static Reason white(Set<Kind> kinds, boolean one) {
    if (kinds.contains(Kind.EASTER))
      return new Reason(Sentence.of("White, for Easter Time."), "GIRM 346 a");
    if (kinds.contains(Kind.CHRISTMAS))
      return new Reason(Sentence.of("White, for Christmas Time."), "GIRM 346 a");
    if (kinds.contains(Kind.LORD)) {
      return new Reason(
          Sentence.of("White, for a celebration of the Lord other than of his Passion."),
          "GIRM 346 a");
    }
    if (kinds.contains(Kind.BVM))
      return new Reason(Sentence.of("White, for the Blessed Virgin Mary."), "GIRM 346 a");
    if (kinds.contains(Kind.ANGELS))
      return new Reason(Sentence.of("White, for the holy angels."), "GIRM 346 a");
    if (kinds.contains(Kind.ALL_SAINTS))
      return new Reason(Sentence.of("White, for All Saints."), "GIRM 346 a");
    if (kinds.contains(Kind.DEDICATION)) {
      return new Reason(Sentence.of("White, for the dedication of a church."), "common practice");
    }
    if (kinds.contains(Kind.CIVIL_DAY)) {
      return new Reason(
          Sentence.of("White, for this Mass of the country."),
          "Roman Missal, proper of the United States");
    }
    if (kinds.contains(Kind.APOSTLE) || kinds.contains(Kind.JOHN_THE_BAPTIST)) {
      return new Reason(Sentence.of("White, since the norm names this day."), "GIRM 346 a");
    }
    return one
        ? new Reason(Sentence.of("White, for a saint who was not a martyr."), "GIRM 346 a")
        : new Reason(Sentence.of("White, for saints who were not martyrs."), "GIRM 346 a");
  }

  private static boolean isOne(LocalName name) {
    String english = name.english();
    boolean singular = english.startsWith("Saint ") || english.startsWith("Blessed ");
    return singular && !english.contains("Companions") && !english.contains("Martyrs");
  }
}
