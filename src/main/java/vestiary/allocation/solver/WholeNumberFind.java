package vestiary.allocation.solver;

/**
 * What a search by one measure came to.
 *
 * @param columns the best values found, empty if none
 * @param bound the least the measure can be
 * @param work units done
 * @param possible false only where it is shown that no values keep all bounds
 */
record WholeNumberFind(long[] columns, long bound, double work, boolean possible) {

  static WholeNumberFind impossible(double work) {
    return new WholeNumberFind(new long[0], 0, work, false);
  }
}
