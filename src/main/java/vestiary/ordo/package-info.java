/**
 * The ordo: a liturgical year of the cluster, or of one church in it, day by day, as a page, as a
 * booklet, as calendar file and as table. Knows the calendar and the cluster and writes nothing.
 * Start at {@link vestiary.ordo.ReadOrdo}.
 */
package vestiary.ordo;
