/**
 * Who serves at a Mass, by name: servers, acolytes, readers, extraordinary ministers of Holy
 * Communion, sacristans. It keeps the names and answers the schedule, which carries them to every
 * page; concelebrants and deacons are named with the Mass itself. Start at {@link
 * vestiary.serving.NameServing}.
 */
package vestiary.serving;
