/**
 * The plan of a span: asked for with one press, worked out in the background, shown with what it
 * would change, applied in one transaction, and undone. Loads what {@link vestiary.planning} loads,
 * lets the planner of the core work, and keeps what it found. Start at {@link
 * vestiary.plan.PlanSpan} and {@link vestiary.plan.RunPlan}.
 */
package vestiary.plan;
