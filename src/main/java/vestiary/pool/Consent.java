package vestiary.pool;

import java.time.Instant;
import vestiary.vesting.MassId;

/**
 * An owner's answer, whether a piece of his may go to a Mass elsewhere.
 *
 * @param piece its code
 * @param owner whose it is
 * @param granted yes, or no
 * @param by name typed by whoever noted it
 * @param version to notice a lost race
 */
public record Consent(
    MassId mass, String piece, String owner, boolean granted, String by, Instant at, int version) {}
