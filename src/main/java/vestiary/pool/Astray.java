package vestiary.pool;

import vestiary.vesting.ChurchId;

/**
 * A piece that lies away from home.
 *
 * @param piece its code
 * @param set code of its set, or empty
 * @param church where it lies
 */
public record Astray(String piece, String set, ChurchId church, ChurchId home) {}
