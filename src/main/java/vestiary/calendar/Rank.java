package vestiary.calendar;

/**
 * What a celebration is, in the words of the calendar. A commemoration is a memorial that a higher
 * weekday leaves only its collect; the Mass keeps the colour of the day.
 *
 * <p>Source: UNLY 8 to 16; GIRM 355 a for the commemoration.
 */
public enum Rank implements Term {
  SOLEMNITY,
  SUNDAY,
  FEAST_OF_THE_LORD,
  FEAST,
  MEMORIAL,
  OPTIONAL_MEMORIAL,
  COMMEMORATION,
  FERIA
}
