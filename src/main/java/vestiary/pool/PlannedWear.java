package vestiary.pool;

import java.time.Instant;
import vestiary.vesting.ChurchId;
import vestiary.vesting.Wearer;

/**
 * A piece that an applied plan gives to somebody, until a new plan is applied, somebody sets it
 * aside, or it is put in care.
 *
 * @param piece its code
 * @param depth how far down the ladder of lawful substitutes it lies; 0 for what is asked
 * @param from first moment at the church, usually set-out
 * @param until half-open end, usually clearance
 */
public record PlannedWear(
    String piece, Wearer wearer, ChurchId church, int depth, Instant from, Instant until) {}
