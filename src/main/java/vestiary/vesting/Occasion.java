package vestiary.vesting;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import vestiary.calendar.Colour;
import vestiary.calendar.MassKind;
import vestiary.calendar.Rank;
import vestiary.calendar.Season;

/**
 * The day on which a Mass is, as far as it says which vestments suit best.
 *
 * @param season of the day that the Mass belongs to
 * @param rank of the celebration that is chosen
 */
public record Occasion(Season season, Rank rank) {

  /** A weekday in no season that has a shade of its own. */
  public static final Occasion WEEKDAY = new Occasion(Season.ORDINARY, Rank.FERIA);

  private static final Set<MassKind> SOLEMN =
      EnumSet.of(
          MassKind.ORDINATION,
          MassKind.DEDICATION,
          MassKind.CHRISM,
          MassKind.LORDS_SUPPER,
          MassKind.EASTER_VIGIL);

  private static final Set<MassKind> FESTIVE =
      EnumSet.of(MassKind.WEDDING, MassKind.CONFIRMATION, MassKind.BAPTISM, MassKind.PROFESSION);

  public Occasion {
    Objects.requireNonNull(season, "season");
    Objects.requireNonNull(rank, "rank");
  }

  /**
   * For which days the vestments should be meant by their making: the most precious on solemnities,
   * with a bishop and at the greatest rites, better ones on Sundays and feasts and at the
   * sacraments that take white or a festive colour.
   *
   * <p>Source: GIRM 346 g and 347; where the line is drawn: common practice, no source.
   */
  Grade grade(MassKind kind, boolean bishop) {
    if (bishop || rank == Rank.SOLEMNITY || SOLEMN.contains(kind)) {
      return Grade.SOLEMN;
    }
    boolean festive =
        switch (rank) {
          case SUNDAY, FEAST_OF_THE_LORD, FEAST -> true;
          default -> FESTIVE.contains(kind);
        };
    return festive ? Grade.FESTIVE : Grade.FERIAL;
  }

  /** The shade that is custom for a colour in the season; empty if it has none. */
  String shade(Colour colour) {
    boolean shaded = season == Season.ADVENT || season == Season.LENT;
    return colour == Colour.VIOLET && shaded ? season.id() : "";
  }
}
