package vestiary.cluster;

import vestiary.vesting.ChurchId;

/**
 * How long a piece is on its way from one church to another.
 *
 * @param minutes whole minutes, 1 or more
 * @param isEstimated whether it was guessed from coordinates, since nobody has timed it
 */
public record Journey(ChurchId from, ChurchId to, int minutes, boolean isEstimated) {}
