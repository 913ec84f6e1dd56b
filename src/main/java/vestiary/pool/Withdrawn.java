package vestiary.pool;

import java.time.LocalDate;

/**
 * That a piece is out of use for good.
 *
 * @param on since when
 * @param to where it went
 */
public record Withdrawn(LocalDate on, String reason, String to) {}
