package vestiary.pool;

import java.time.Instant;

/**
 * What a piece does beside something new in the same church, and the time that is left for it: both
 * meet where the one Mass is over and the turn after it.
 *
 * @param piece its code
 * @param since when it has begun so far, by which it is found
 * @param from first moment that is left
 * @param until half-open end
 */
public record Shortened(String piece, Instant since, Instant from, Instant until) {}
