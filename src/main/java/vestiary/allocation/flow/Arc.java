package vestiary.allocation.flow;

/**
 * A way in a network, over which so many items go as its column says.
 *
 * @param from row of the node it leaves
 * @param to row of the node it reaches
 * @param slot number of the Mass served on it, or -1
 * @param trip number of the trip made on it, or -1
 */
record Arc(int from, int to, int column, int slot, int trip) {}
