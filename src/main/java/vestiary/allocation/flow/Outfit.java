package vestiary.allocation.flow;

/**
 * What one wearer of a group has by a solution: classes of pieces, or none.
 *
 * @param group place of the group in its Mass
 * @param type class of the piece, or one of the marks below
 * @param mate the same of what is worn with it, {@link #NOTHING} if nothing more is asked
 * @param whole whether both are of one set
 */
public record Outfit(int group, int type, int mate, boolean whole) {

  public static final int LEFT_OUT = Supplied.LEFT_OUT;
  public static final int UNMET = Supplied.UNMET;
  public static final int NOTHING = -4;
}
