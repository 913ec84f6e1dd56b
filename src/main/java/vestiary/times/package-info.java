/**
 * Mass times for the people: published by one press, kept as published, shown without sign-in on a
 * page, as a text for the bulletin, a sheet for the church door and a calendar. Start at {@link
 * vestiary.times.PublishTimes}.
 */
package vestiary.times;
