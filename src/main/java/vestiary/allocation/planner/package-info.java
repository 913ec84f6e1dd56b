/**
 * From a situation to a plan: day by day what can be met at all, then over the whole span with the
 * fewest journeys, then with names of pieces. Start reading at {@link
 * vestiary.allocation.planner.Planner}.
 */
package vestiary.allocation.planner;
