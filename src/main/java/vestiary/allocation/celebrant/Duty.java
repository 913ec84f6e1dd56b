package vestiary.allocation.celebrant;

import java.util.List;

/**
 * What one priest could be given on one counted day besides his engagements: no Mass, or some that
 * he can be at one after the other.
 *
 * @param costs by level, for those levels that are settled Mass by Mass and priest by priest
 * @param burden of early and far Masses
 * @param changes Masses that somebody else is named for now
 */
record Duty(
    Priest priest,
    CountedDay day,
    List<MassToServe> masses,
    long[] costs,
    long burden,
    long changes) {}
