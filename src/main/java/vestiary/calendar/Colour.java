package vestiary.calendar;

/**
 * A liturgical colour. Shades (Advent's bluish violet, Lent's reddish) are facts of a piece and no
 * colours of their own; blue is no liturgical colour of the general calendar.
 *
 * <p>Source: General Instruction of the Roman Missal (GIRM) 346; gold and silver: Redemptionis
 * Sacramentum 127.
 */
public enum Colour implements Term {
  WHITE,
  RED,
  GREEN,
  VIOLET,
  ROSE,
  BLACK,
  GOLD,
  SILVER
}
