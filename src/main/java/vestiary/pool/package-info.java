/**
 * The vestments: pieces and the sets they make, where they lie, and the care they are in. The
 * records named {@code …View} and {@code …Form} hold what a page prints, already in words.
 */
package vestiary.pool;
