package vestiary.proper;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.Rank;
import vestiary.calendar.SundayBeside;
import vestiary.web.Ribbon;

/** How pages say where a proper stands, when it is kept and by whom. */
final class ProperWords {

  private ProperWords() {}

  /** For example "principal patron of the diocese: feast". */
  static String place(ProperPlace place) {
    String rank = rank(place.rank());
    return switch (place) {
      case PATRON_OF_THE_PLACE -> "principal patron of the town or place: " + rank;
      case FOUNDER_OF_AN_ORDER -> "title, founder or principal patron of an order: " + rank;
      case PATRON_OF_THE_DIOCESE -> "principal patron of the diocese: " + rank;
      case DEDICATION_OF_THE_CATHEDRAL -> "dedication of the cathedral: " + rank;
      case PATRON_OF_THE_REGION -> "principal patron of a region or country: " + rank;
      case FEAST_OF_AN_ORDER -> "principal patron of a religious province: " + rank;
      case FEAST_OF_ONE_CHURCH -> "another " + rank + " of one church";
      case FEAST_OF_THE_DIOCESE -> "another " + rank + " of the diocese or order";
      case SECONDARY_PATRON -> "secondary patron: " + rank;
      case MEMORIAL, OPTIONAL_MEMORIAL -> rank + " of the diocese, order or church";
    };
  }

  /** For example "feast of the Lord". */
  static String rank(Rank rank) {
    return rank == Rank.FEAST_OF_THE_LORD ? "feast of the Lord" : rank.id().replace('-', ' ');
  }

  /**
   * Where it stands and to which Sunday it is taken.
   *
   * @param rank that the church keeps it with, said where the proper gives it no place
   */
  static String standing(EnteredProper proper, Rank rank) {
    String place = proper.findPlace().map(ProperWords::place).orElseGet(() -> rank(rank));
    return proper
        .find(Proper.OnSunday.class)
        .map(wish -> place + ", " + sunday(wish.sunday()))
        .orElse(place);
  }

  /** For example "on the Sunday before". */
  static String sunday(SundayBeside sunday) {
    return switch (sunday) {
      case BEFORE -> "on the Sunday before";
      case AFTER -> "on the Sunday after";
      case NEAREST -> "on the nearest Sunday";
    };
  }

  /** Their names, one by one since many have an "and" in them, or that it is all of them. */
  static List<String> churches(EnteredProper proper, List<TitledChurch> bound) {
    return proper.everywhere()
        ? List.of("All churches")
        : bound.stream().map(TitledChurch::name).toList();
  }

  static Ribbon ribbon(Colour colour) {
    return new Ribbon(colour, colour.id());
  }
}
