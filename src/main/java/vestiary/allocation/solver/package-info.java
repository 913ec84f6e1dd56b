/**
 * Linear programs in whole numbers, minimised by several measures one after the other, and the
 * libraries that do it: a native one where it loads, one in pure Java everywhere else. Knows
 * nothing of vestments. Start reading at {@link vestiary.allocation.solver.Program}.
 */
package vestiary.allocation.solver;
