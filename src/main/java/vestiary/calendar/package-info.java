/**
 * From a date and a church's calendar to the celebrations, their colours and the Masses that may be
 * said: the norms of the Roman Rite as a pure function, with its tables under {@code
 * resources/calendar}. It knows no clock, no parish, no vestment and no person; it reads nothing
 * but its own tables. Why a day is as it is it says as {@link vestiary.calendar.Sentence}, pattern
 * and values apart, so that rooms that speak can say it in another language. Start at {@link
 * vestiary.calendar.LiturgicalCalendar}, then {@code YearBuilder}.
 */
package vestiary.calendar;
