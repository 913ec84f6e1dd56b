package vestiary.proper;

import static vestiary.web.Speech.say;

import java.util.List;
import vestiary.calendar.Colour;
import vestiary.calendar.Proper;
import vestiary.calendar.ProperPlace;
import vestiary.calendar.Rank;
import vestiary.calendar.SundayBeside;
import vestiary.web.Ribbon;
import vestiary.web.Speech;

/** How pages say where a proper stands, when it is kept and by whom. */
final class ProperWords {

  private ProperWords() {}

  /** For example "principal patron of the diocese: feast". */
  static String place(ProperPlace place) {
    String rank = rank(place.rank());
    return switch (place) {
      case PATRON_OF_THE_PLACE -> say("principal patron of the town or place: %s", rank);
      case FOUNDER_OF_AN_ORDER -> say("title, founder or principal patron of an order: %s", rank);
      case PATRON_OF_THE_DIOCESE -> say("principal patron of the diocese: %s", rank);
      case DEDICATION_OF_THE_CATHEDRAL -> say("dedication of the cathedral: %s", rank);
      case PATRON_OF_THE_REGION -> say("principal patron of a region or country: %s", rank);
      case FEAST_OF_AN_ORDER -> say("principal patron of a religious province: %s", rank);
      case FEAST_OF_ONE_CHURCH -> say("another %s of one church", rank);
      case FEAST_OF_THE_DIOCESE -> say("another %s of the diocese or order", rank);
      case SECONDARY_PATRON -> say("secondary patron: %s", rank);
      case MEMORIAL, OPTIONAL_MEMORIAL -> say("%s of the diocese, order or church", rank);
    };
  }

  /** For example "feast of the Lord". */
  static String rank(Rank rank) {
    return switch (rank) {
      case SOLEMNITY -> say("solemnity");
      case FEAST_OF_THE_LORD -> say("feast of the Lord");
      case FEAST -> say("feast");
      case MEMORIAL -> say("memorial");
      case OPTIONAL_MEMORIAL -> say("optional memorial");
      default -> rank.id().replace('-', ' ');
    };
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

  /** For example say("on the Sunday before"). */
  static String sunday(SundayBeside sunday) {
    return switch (sunday) {
      case BEFORE -> say("on the Sunday before");
      case AFTER -> say("on the Sunday after");
      case NEAREST -> say("on the nearest Sunday");
    };
  }

  /** Their names, one by one since many have an "and" in them, or that it is all of them. */
  static List<String> churches(EnteredProper proper, List<TitledChurch> bound) {
    return proper.everywhere()
        ? List.of(say("All churches"))
        : bound.stream().map(TitledChurch::name).toList();
  }

  static Ribbon ribbon(Colour colour) {
    return new Ribbon(colour, Speech.colour(colour));
  }
}
