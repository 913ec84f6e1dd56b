/**
 * Several clusters on one server: opening another, and the overseer of the diocese, who looks into
 * those that let him. Start at {@link vestiary.oversight.ClustersPage}; the door asks {@link
 * vestiary.oversight.KnownOverseers}.
 */
package vestiary.oversight;
