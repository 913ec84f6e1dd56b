package vestiary.schedule;

import java.time.ZonedDateTime;
import vestiary.calendar.MassKind;
import vestiary.cluster.Church;
import vestiary.vesting.MassId;

/**
 * The Mass to which everybody goes instead of one that is cancelled for its sake.
 *
 * @param start in the cluster's time zone
 */
public record TakenOver(MassId mass, Church church, ZonedDateTime start, MassKind kind) {}
