package vestiary.calendar;

/** A season of the liturgical year. Source: UNLY 18 to 44. */
public enum Season implements Term {
  ADVENT,
  CHRISTMAS,
  ORDINARY,
  LENT,
  TRIDUUM,
  EASTER
}
