package vestiary.review;

import java.time.ZonedDateTime;
import java.util.UUID;

/**
 * That somebody signed a week.
 *
 * @param turn the first of a week is 1
 * @param at in the cluster's time zone
 * @param by what whoever signed is called now
 * @param note may be empty
 */
record Signature(UUID id, int turn, ZonedDateTime at, String by, String note) {}
