package vestiary.calendar;

import java.util.List;

/**
 * The one day with Masses of its own beside the weekday: the Chrism Mass and, in the evening, the
 * Mass of the Lord's Supper. Source: Paschale solemnitatis 35 to 57.
 */
final class HolyThursday {

  static final Sentence BESIDE_THE_WEEKDAY =
      Sentence.of(
          ", with the Chrism Mass and in the evening the Mass of the Lord's Supper, both white");

  private static final String ID = "thursday-of-holy-week";

  private HolyThursday() {}

  static boolean is(Celebration day) {
    return day.id().equals(ID);
  }

  static List<Celebration> celebrations(Celebration weekday) {
    return List.of(weekday, SeparateMasses.CHRISM, SeparateMasses.LORDS_SUPPER);
  }
}
