/**
 * Whose request this is, and what may be done in it: the cluster, the visitor, the table of roles
 * and actions. It knows of users only what {@link vestiary.access.WhoAsks} says. Start at {@link
 * vestiary.access.Door}; what an action is stands in {@link vestiary.access.Action}.
 */
package vestiary.access;
