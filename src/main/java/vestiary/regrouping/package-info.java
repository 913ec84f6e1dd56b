/**
 * Two clusters become one and one becomes two, by whoever keeps the server, with all that was ever
 * done in them. Start at {@link vestiary.regrouping.RegroupAtStart}.
 */
package vestiary.regrouping;
