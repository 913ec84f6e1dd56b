/**
 * What lies on the vesting table for each Mass: who wears what, in the order in which it is laid
 * out, where it comes from, and what may stand in for it; and afterwards what was really worn. It
 * plans nothing. Start at {@link vestiary.setout.ReadSetOut}.
 */
package vestiary.setout;
