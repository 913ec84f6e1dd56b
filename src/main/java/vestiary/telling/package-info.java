/**
 * Tells people by mail what concerns them: on one day of the week what is to come, and at once what
 * has changed. Each chooses. Start at {@link vestiary.telling.WriteWeekLetters}; the letters wait
 * in {@link vestiary.mail.Outbox}.
 */
package vestiary.telling;
