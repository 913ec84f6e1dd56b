package vestiary.plan;

import java.util.Set;
import vestiary.allocation.plan.Occasion;
import vestiary.calendar.Colour;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;
import vestiary.schedule.DatedMass;
import vestiary.vesting.Grade;

/**
 * What a Mass would like its vestments to be: solemn ones on solemnities, festive ones on Sundays
 * and feasts (GIRM 346, last paragraph, for more noble ones on solemn days), and of the two violets
 * the one of the season. Which grade goes with which rank is common practice, no source.
 */
final class Occasions {

  private static final Set<Rank> FESTIVE = Set.of(Rank.SUNDAY, Rank.FEAST_OF_THE_LORD, Rank.FEAST);

  private Occasions() {}

  static Occasion of(DatedMass mass) {
    return new Occasion(grade(mass).id(), shade(mass));
  }

  private static Grade grade(DatedMass mass) {
    Rank rank = mass.option().celebration().rank();
    if (rank == Rank.SOLEMNITY) {
      return Grade.SOLEMN;
    }
    return FESTIVE.contains(rank) ? Grade.FESTIVE : Grade.FERIAL;
  }

  private static String shade(DatedMass mass) {
    Season season = mass.ruling().day().season();
    boolean ofSeason =
        mass.colour() == Colour.VIOLET && (season == Season.ADVENT || season == Season.LENT);
    return ofSeason ? season.id() : "";
  }
}
