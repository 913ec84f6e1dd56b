package vestiary.times;

import java.time.LocalDate;
import java.time.ZonedDateTime;

/**
 * What holds for the people.
 *
 * @param at in the cluster's zone
 * @param by who published, as the history knows them
 * @param last last date that was published, included
 */
record Published(
    int turn, ZonedDateTime at, String by, LocalDate first, LocalDate last, PublicTimes times) {}
