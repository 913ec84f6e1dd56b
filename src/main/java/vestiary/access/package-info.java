/**
 * Whose request this is. For now that is the cluster alone: one default cluster, chosen before any
 * row is read; users and roles come into this room too. Start at {@link
 * vestiary.access.CurrentCluster}.
 */
package vestiary.access;
