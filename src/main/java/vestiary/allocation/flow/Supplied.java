package vestiary.allocation.flow;

/**
 * How many needs of a group are served by pieces of one class; or by none, the piece being left out
 * or the need unmet.
 *
 * @param slot number of the Mass
 * @param group place of the group in its Mass
 * @param type class of the pieces, or one of the marks below
 * @param column in the program
 */
record Supplied(int slot, int group, int type, int column) {

  static final int LEFT_OUT = -2;
  static final int UNMET = -3;
}
