/**
 * What vestments there are: pieces, sets and suits, where they belong, and when they are in care.
 * Knows of Masses no more than their ids. Start at {@link vestiary.pool.ReadPool}.
 */
package vestiary.pool;
