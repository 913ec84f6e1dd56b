/**
 * What every page shares: the frame, ribbons and hatching, words for dates and counts, the clock.
 * Knows no feature's rows. Start at {@link vestiary.web.Frame}.
 */
package vestiary.web;
