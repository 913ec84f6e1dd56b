package vestiary.calendar;

/**
 * The table of liturgical days: the constant that stands earlier is kept.
 *
 * <p>The third entry names its own order (the Lord, the Blessed Virgin, the saints), so it has a
 * constant for each. Source: UNLY 59.
 */
public enum Precedence {
  TRIDUUM(1, "I.1"),
  GREAT_SOLEMNITY(2, "I.2"),
  PRIVILEGED_SUNDAY(2, "I.2"),
  ASH_WEDNESDAY(2, "I.2"),
  HOLY_WEEK_WEEKDAY(2, "I.2"),
  EASTER_OCTAVE(2, "I.2"),
  SOLEMNITY_OF_THE_LORD(3, "I.3"),
  SOLEMNITY_OF_MARY(3, "I.3"),
  SOLEMNITY_OF_A_SAINT(3, "I.3"),
  ALL_SOULS(3, "I.3"),
  PATRON_OF_THE_PLACE(4, "I.4 a"),
  OWN_DEDICATION(4, "I.4 b"),
  OWN_TITULAR(4, "I.4 c"),
  PATRON_OF_AN_ORDER(4, "I.4 d"),
  FEAST_OF_THE_LORD(5, "II.5"),
  SUNDAY(6, "II.6"),
  FEAST(7, "II.7"),
  PATRON_OF_THE_DIOCESE(8, "II.8 a"),
  CATHEDRAL_DEDICATION(8, "II.8 b"),
  PATRON_OF_THE_COUNTRY(8, "II.8 c"),
  FEAST_OF_AN_ORDER(8, "II.8 d"),
  FEAST_OF_ONE_CHURCH(8, "II.8 e"),
  OTHER_PROPER_FEAST(8, "II.8 f"),
  LATE_ADVENT_WEEKDAY(9, "II.9"),
  CHRISTMAS_OCTAVE(9, "II.9"),
  LENT_WEEKDAY(9, "II.9"),
  MEMORIAL(10, "III.10"),
  MEMORIAL_OF_A_PATRON(11, "III.11 a"),
  OTHER_PROPER_MEMORIAL(11, "III.11 b"),
  OPTIONAL_MEMORIAL(12, "III.12"),
  ADVENT_WEEKDAY(13, "III.13"),
  CHRISTMAS_WEEKDAY(13, "III.13"),
  EASTER_WEEKDAY(13, "III.13"),
  ORDINARY_WEEKDAY(13, "III.13");

  private final int number;
  private final String source;

  Precedence(int number, String place) {
    this.number = number;
    this.source = "UNLY 59 " + place;
  }

  /** The number in the table, 1 to 13; a lower number is kept. */
  public int number() {
    return number;
  }

  /** The entry of the table, for example {@code UNLY 59 II.5}. */
  public String source() {
    return source;
  }

  boolean isBefore(Precedence other) {
    return ordinal() < other.ordinal();
  }
}
