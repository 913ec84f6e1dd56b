/**
 * Who celebrates which Mass: who can, who cannot and why, the fairest division among those who can,
 * and the proof where nobody is left. Knows no vestments, no clock and no rows. Start reading at
 * {@link vestiary.allocation.celebrant.Question}, then {@link
 * vestiary.allocation.celebrant.DivideMasses}.
 */
package vestiary.allocation.celebrant;
