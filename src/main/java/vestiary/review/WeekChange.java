package vestiary.review;

import java.time.LocalDate;

/**
 * Something that is otherwise than it was signed.
 *
 * @param date under which it stands
 * @param sentence one whole sentence
 * @param by who changed it last, and when; empty where that is not known, or not for the reader
 */
record WeekChange(LocalDate date, String sentence, String by) {}
