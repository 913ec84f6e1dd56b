package vestiary.schedule;

import java.time.Instant;

/**
 * How often and when a Mass was changed, what is said of it in words left aside.
 *
 * @param sequence 0 for one that is as it was entered
 * @param changed when it was changed last, or entered
 */
public record MassStamp(int sequence, Instant changed) {}
