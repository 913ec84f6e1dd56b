package vestiary.schedule;

import vestiary.vesting.MassId;

/**
 * A Mass is at another hour or in another church than before, or lasts otherwise, or is cancelled.
 * Whoever holds something for it hears of it within the same transaction.
 *
 * @param cancelled whether it is not said at all
 */
public record MassMoved(MassId mass, boolean cancelled) {}
