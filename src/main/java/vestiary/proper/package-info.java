/**
 * What a cluster keeps beside the calendar of its country: the days of its diocese, of a place, an
 * order or a church. Knows of churches only what {@link vestiary.proper.ChurchesToBind} says. Start
 * at {@link vestiary.proper.SaveProper}; what may stand is in {@link vestiary.proper.ProperRules}.
 */
package vestiary.proper;
