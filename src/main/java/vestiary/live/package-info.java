/**
 * Tells open pages that something has changed, whichever copy of the server changed it. The
 * database announces each change of a row that a page shows (migration V020); {@link
 * vestiary.live.ChangeBell} hears it and {@link vestiary.live.LiveResource} passes it on to the
 * pages, which then read themselves anew (js/live.js).
 */
package vestiary.live;
