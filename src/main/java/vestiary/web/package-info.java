/**
 * What every page shares: its frame, the ribbons and marks, and the drawing of colours that read
 * without colour. Knows the calendar and nothing of any feature. Start at {@link
 * vestiary.web.Frame}.
 */
package vestiary.web;
