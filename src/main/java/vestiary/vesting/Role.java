package vestiary.vesting;

import java.util.List;
import vestiary.calendar.Term;

/**
 * In what capacity somebody vests. A bishop who presides is the principal celebrant; whoever leads
 * a liturgy that is no Mass is its minister. The deceased is here for the pall upon the coffin.
 *
 * <p>Source: GIRM 337 to 339 and 209; the pall: Order of Christian Funerals 38.
 */
public enum Role implements Term {
  PRINCIPAL,
  CONCELEBRANT,
  DEACON,
  MINISTER,
  /** Ordained a priest at this Mass. */
  NEW_PRIEST,
  /** Ordained a deacon at this Mass. */
  NEW_DEACON,
  ACOLYTE,
  READER,
  SERVER,
  OTHER,
  DECEASED;

  /** Those who may vest besides the celebrants and deacons, and are entered by number. */
  public static final List<Role> FURTHER =
      List.of(SERVER, ACOLYTE, READER, OTHER, NEW_PRIEST, NEW_DEACON);

  /** Whether it is a lay minister, who may wear other approved dress (GIRM 339). */
  public boolean isLay() {
    return this == ACOLYTE || this == READER || this == SERVER || this == OTHER;
  }
}
