package vestiary.pool;

/**
 * What an inventory says of a piece beside what planning must know; empty where nobody said.
 *
 * <p>Source: CIC 1283, 2°: an inventory describes each thing; what it is worth is kept apart.
 *
 * @param provenance its maker, and by whose gift it came; may name people
 * @param acquired when, as people know it: "1911", "before the war"
 * @param precious for its art or history, so that it is never alienated as other things are
 * @param keeper who keeps it where that is not the sacristy of its church; else empty
 */
public record Particulars(
    String description, String provenance, String acquired, boolean precious, String keeper) {

  public static final Particulars NONE = new Particulars("", "", "", false, "");
}
