package vestiary.calendar;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The colours of a Mass that is not simply the Mass of the day. Gold and silver are left out: they
 * are facts of a vestment, and stand in for a colour.
 *
 * <p>Source: GIRM 346, 347; Order of Celebrating Matrimony 34; Pastoral Care of the Sick 134; the
 * Missal's ritual Masses.
 */
final class MassColours {

  private final boolean whiteForTheDead;

  MassColours(boolean whiteForTheDead) {
    this.whiteForTheDead = whiteForTheDead;
  }

  /** Lawful colours, the usual one first, of a Mass that is permitted and has no subject. */
  List<Colour> of(MassKind kind, Day day, DayKind row) {
    List<Colour> colours = day.kept().colours();
    return switch (kind) {
      case FUNERAL, FUNERAL_OUTSIDE_MASS, DEAD_ANNIVERSARY, DEAD -> dead();
      case SCRUTINY -> scrutiny(colours);
      case CONFIRMATION -> List.of(Colour.RED, Colour.WHITE);
      case BAPTISM, ANOINTING -> row == DayKind.SUNDAY ? join(colours, white()) : white();
      case PROCESSION -> join(colours, white());
      case OF_THE_DAY, ANTICIPATED, GOOD_FRIDAY, OTHER -> colours;
      default -> white();
    };
  }

  /** What suits the votive Mass, or the colour of the day or season. */
  List<Colour> ofVotive(String votiveOf, Optional<Celebration> celebration, Day day) {
    return join(Votives.colours(votiveOf, celebration), ofDayOrSeason(day));
  }

  /** The colour of the day or season, and violet where the Mass is penitential. */
  List<Colour> ofNeeds(String votiveOf, Day day) {
    return Votives.isPenitential(votiveOf)
        ? join(ofDayOrSeason(day), List.of(Colour.VIOLET))
        : ofDayOrSeason(day);
  }

  /** Violet; on the fourth Sunday of Lent rose as well, which is disputed. */
  private static List<Colour> scrutiny(List<Colour> ofTheDay) {
    return ofTheDay.contains(Colour.ROSE)
        ? List.of(Colour.VIOLET, Colour.ROSE)
        : List.of(Colour.VIOLET);
  }

  private List<Colour> dead() {
    return whiteForTheDead
        ? List.of(Colour.WHITE, Colour.VIOLET, Colour.BLACK)
        : List.of(Colour.VIOLET, Colour.BLACK);
  }

  private static List<Colour> ofDayOrSeason(Day day) {
    return join(day.kept().colours(), List.of(SeasonColours.of(day.season())));
  }

  private static List<Colour> white() {
    return List.of(Colour.WHITE);
  }

  private static List<Colour> join(List<Colour> first, List<Colour> second) {
    Set<Colour> colours = new LinkedHashSet<>(first);
    colours.addAll(second);
    return new ArrayList<>(colours);
  }
}
