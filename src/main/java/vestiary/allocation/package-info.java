/**
 * Where needs are more than the pieces that can serve them in time, each finding with its proof.
 * Knows needs, pieces and journeys; knows no database, no clock and no words for people. Start
 * reading at {@link vestiary.allocation.ClashCheck}; for who wears what, at {@link
 * vestiary.allocation.planner.Planner}; for what mends a shortage, at {@link
 * vestiary.allocation.remedy.Remedies}.
 */
package vestiary.allocation;
