/**
 * Masses as calendars that programs ask for again and again: of one person, of a church. Start at
 * {@link vestiary.feed.MassFeeds}; the file is written by {@link vestiary.feed.MassCalendar}.
 */
package vestiary.feed;
