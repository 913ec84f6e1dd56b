/**
 * The question put to the planner and its answer, as plain records: what is asked, held and worn,
 * who drives where; then which piece serves which need, by which journeys, how good that is and how
 * good it could be. Holds the proof that checks a plan anew, without any solver. Start reading at
 * {@link vestiary.allocation.plan.Situation} and {@link vestiary.allocation.plan.Plan}.
 */
package vestiary.allocation.plan;
