package vestiary.pool;

/**
 * Whether a piece was worn at a Mass, as somebody has put it right.
 *
 * @param piece its code
 * @param insteadOf code of the piece that lay ready and was not worn; empty if there was none
 */
public record Worn(String piece, boolean worn, String insteadOf) {}
