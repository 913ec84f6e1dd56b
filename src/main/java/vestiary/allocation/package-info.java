/**
 * Where needs are more than the pieces that can serve them in time, each finding with its proof.
 * Knows needs, pieces and journeys; knows no database, no clock and no words for people, and puts
 * nobody's name to a piece. Start reading at {@link vestiary.allocation.ClashCheck}.
 */
package vestiary.allocation;
