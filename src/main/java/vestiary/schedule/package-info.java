/**
 * When and where Mass is celebrated: patterns, the dated Masses they yield, and those entered by
 * hand. Rows hold only what was chosen; {@link vestiary.schedule.DatedMass} adds what follows from
 * the calendar. Start at {@link vestiary.schedule.ReadMasses}.
 */
package vestiary.schedule;
