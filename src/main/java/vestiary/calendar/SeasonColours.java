package vestiary.calendar;

/** The colour of the season itself. Source: GIRM 346. */
final class SeasonColours {

  private SeasonColours() {}

  static Colour of(Season season) {
    return switch (season) {
      case ADVENT, LENT, TRIDUUM -> Colour.VIOLET;
      case CHRISTMAS, EASTER -> Colour.WHITE;
      case ORDINARY -> Colour.GREEN;
    };
  }

  static Colour of(Kind season) {
    return of(Season.valueOf(season.name()));
  }
}
