/**
 * What one Mass asks of the sacristy: who vests, in which pieces and colours, from set-out to
 * clearance, and which lawful substitute may stand in where a piece is lacking. Knows the norms of
 * vesture (General Instruction of the Roman Missal, GIRM; Redemptionis Sacramentum, RS) and what a
 * piece is; knows no journeys, no stock, no database and no clock. Start reading at {@link
 * vestiary.vesting.VestingNorms}.
 */
package vestiary.vesting;
