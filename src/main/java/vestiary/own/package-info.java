/**
 * What concerns one person: the Masses, what is worn at them, the journeys. It keeps nothing and
 * asks the features that do. Start at {@link vestiary.own.OwnPage}.
 */
package vestiary.own;
