/**
 * The cluster and where things are: parishes, churches, journeys, calendar and policies. Knows
 * nothing of Masses or vestments. Start at {@link vestiary.cluster.ReadCluster}.
 */
package vestiary.cluster;
