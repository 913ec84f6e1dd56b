/**
 * Vestments lent by one cluster to another: offered by the one, answered by the other, seen by both
 * and by nobody else. What a yes moves between the two pools, the database moves (migration V026).
 * Start at {@link vestiary.lending.OfferPieces}.
 */
package vestiary.lending;
